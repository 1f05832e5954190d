// Why: the catalogue's words as indexes, built once: parts, aspects, kinds, stations.
import { generalAspects } from '../../catalogue/general-aspect.ts';
import { parts, stations } from '../../catalogue/index.ts';
import { commonWords } from './common-words.ts';
import { composedNames } from './composed-names.ts';
import { defectTable } from './defect-table.ts';
import { goodTable, praiseWords } from './good-words.ts';
import { fractions, ones, ordinals, scales, teens, tens } from './number-words.ts';
import { PhraseIndex, phraseList, phrasesOf } from './phrase-index.ts';
import { type TypeWord, typeWords } from './type-words.ts';
import { normsOf } from './word.ts';
import { workVerbs } from './work-words.ts';

const plural = (word: string): string =>
  /(?:s|x|ch|sh)$/.test(word)
    ? `${word}es`
    : /[^aeiou]y$/.test(word)
      ? `${word.slice(0, -1)}ies`
      : `${word}s`;
const singular = (word: string): string =>
  /ies$/.test(word)
    ? `${word.slice(0, -3)}y`
    : /(?:ches|shes|xes|sses)$/.test(word)
      ? word.slice(0, -2)
      : /[^su]s$/.test(word)
        ? word.slice(0, -1)
        : word;

const asTheyAre = new Set(
  'steadies,hydraulics,steers,drives,outers,inners,graphics,books,gauges,airs,heated,swivel,levelling,leveling,steering,solar,surge,house,chassis,basement,propane,navigation,plumbing'.split(
    ',',
  ),
);

/** A phrase with its last word in one and in many. */
function numbersOf(phrase: string): string[] {
  const words = phrase.toLowerCase().split(' ');
  const last = words.at(-1) ?? '';
  if (last.length < (words.length > 1 ? 3 : 4) || !/^[a-z]+$/.test(last) || asTheyAre.has(phrase))
    return [phrase];
  const head = words.slice(0, -1);
  return [...new Set([last, last.endsWith('s') ? singular(last) : plural(last)])].map((w) =>
    [...head, w].join(' '),
  );
}

/** Words so general that they name a part only beside what is said of it; they never become what the talk is about. */
export const weakParts: ReadonlySet<string> = new Set(
  (
    'rear corner,front corner,bedroom corner,fifth wheel,fifth wheels,travel trailer,smoke,heat,pet,smell,odor,rust,stain,tank,cap,glass,screen,step,stop,panels,dish,change,pan,returns,monitor,rubber,tile,vinyl,bubble,wave,trim,covered,hail,flood,mask,zones,cables,tray,inside,interior,cabin,' +
    'unit,rig,vehicle,van,trailer,coach,bus,rv,scale,paper,table,chairs,books,corner,corners,house,chassis,storage,wall,walls,cell,cells,bank,motor,fitting,fittings,pipe,drives,steers,table,plug,plugs,light,lights,key,gas tank,codes,code,' +
    'accident,wreck,seat,musty,panel,rail,fittings,stem,shock,chains,surge,frame,dump,valve,drum,pad,belt,hose,door,doors,sensors,sensor,gauges,trans,lav,love,nose,receipts,covered,flush,smoke,combo,furniture,puddle,gutter,lean,brah,bra,camera monitor,rubber,service,puck light,over the cab,fault,ram,studs,column,cluster,rad,truss,idle,leaf,pinion,bellows,toe,instruments,underneath,shifting,braking,bottle,cylinder,hub,arms,vent,fan,pump,def,dash,' +
    'adapter,ammonia,basin,boost,bowl,breaker,breather,buckle,buzzer,carb,clock,collar,column,damper,dampers,disc,discs,dome,film,fixture,fixtures,fuse,gears,grill,grout,gutters,hanger,headboard,heating,hold down,idler,island,legs,lighting,magnet,magnets,neutral,overhead,pedal,pilot,posts,probe,probes,prongs,pulley,registration,reservoir,seam,seams,sender,senders,shaft,speaker,splice,sprayer,stat,sump,throne,tin,trap,traps,wand,wires,wiring,chassis bank,gas line,cats,recall,recalls,adapter,layout,floor plan,floorplan,floor plans,binder,gauge,platform,pulls,hinges,bulb,bulbs,massage,recline,placard,hutch,console,log,logs,notebook,ledger,journal,hookups,copilot,bezel,decking,plywood,lounge,rest,speakers,benches,documentation,vac,pull cord,pull string,beeper,nav,tobacco,cushion,cushions,shelf'
  ).split(','),
);

/** Left out of the index: catalogue words that mean something else too often. */
const skipped = new Set(
  'foggy,rust,stain,smell,wave,bubble,mask,returns,zones,covered,change,chance,screen,paper,low spot,soft spot,spongy,lamps,oil leaks,oil leak,dish,inside,service,pet,musty,water stain,soft wall,hail,flood,accident,wreck,delam,delamination,fogged,frameless,dual pane,bra,feels,left,cold air,stop,unit,tire rod,fifty amp,thirty amp,water in the bay,water leak,heat,lithium,rubber,owner,books,flush,gauges,work orders,bearings,bearing'.split(
    ',',
  ),
);

/** Where one phrase names several parts, those that come first are meant unless the talk is about another. */
const first = [
  'levelling_jacks',
  'exhaust_pipe',
  'engine_oil',
  'coach',
  'keys_set',
  'tire',
  'slide',
  'generator',
  'ac_roof',
  'water_heater_out',
  'furnace_run',
  'tail_lights',
  'roof_membrane',
  'floor_main',
  'lp_tank',
  'shades_house',
  'driver_seat',
  'refrigerator',
  'house_battery',
];

export const partPhrases = new PhraseIndex<string>();
const ordered = [...parts].sort((a, b) => Number(first.includes(b.id)) - Number(first.includes(a.id)));
for (const part of ordered) {
  for (const phrase of [part.name, ...part.say]) {
    if (skipped.has(phrase.toLowerCase())) continue;
    for (const p of numbersOf(phrase.toLowerCase())) partPhrases.add(p, part.id);
  }
}
const listed = new Set(parts.flatMap((p) => [p.name, ...p.say]).flatMap((p) => numbersOf(p.toLowerCase())));
for (const [id, phrases] of Object.entries(composedNames))
  for (const p of phrases.flatMap(numbersOf)) if (!listed.has(p)) partPhrases.add(p, id);
for (const part of parts) {
  for (const phrase of part.heardAs) {
    const norms = normsOf(phrase);
    const odd =
      norms.length > 1
        ? norms.some((n) => n.length > 2)
        : norms[0] !== undefined && norms[0].length > 4 && !commonWords.has(norms[0]);
    if (
      odd &&
      !skipped.has(phrase) &&
      !/^(?:letter|latter|change|chance|hatch|flesh|death|rough|potter|bells|ducks|sheds|shapes|pomp|punk|tables|crews|chords|fruit cap|heed|draws|rangers|chock|chocks|vipers|rhymes|ceiling|sealing|water calm|tables|coach|cobbler|chalk|talk|egrets|gages|cool aunt|rest|track|dragging|tired|exhausted|granny|yawning|spear|pay off|side out|push her|smelt)$/.test(
        phrase,
      )
    )
      partPhrases.add(phrase, part.id);
  }
}

/** "part/aspect" keys by the words that name the aspect. */
export const aspectPhrases = new PhraseIndex<string>();
for (const part of parts) {
  for (const a of part.aspects)
    for (const phrase of [a.name, ...(a.say ?? [])]) aspectPhrases.add(phrase, `${part.id}/${a.id}`);
}
for (const a of generalAspects)
  if (a.kind === 'date' || a.kind === 'quantity')
    for (const phrase of a.say ?? []) aspectPhrases.add(phrase, `*/${a.id}`);

export const defectPhrases = phrasesOf(defectTable);
export const goodPhrases = phrasesOf(goodTable);
export const praisePhrases = phraseList(praiseWords);
export const verbs = phraseList(workVerbs);
export const typePhrases = new PhraseIndex<TypeWord>();
for (const { phrase, word } of typeWords) for (const p of numbersOf(phrase)) typePhrases.add(p, word);

export const stationPhrases = new PhraseIndex<string>();
for (const s of stations) for (const phrase of s.say) stationPhrases.add(phrase, s.id);

const known = new Set<string>(commonWords);
for (const n of [ones, teens, tens, scales, fractions, ordinals].flatMap((t) => Object.keys(t))) known.add(n);
for (const p of parts) for (const phrase of [p.name, ...p.say]) for (const n of normsOf(phrase)) known.add(n);
for (const phrase of [
  ...Object.keys(defectTable),
  ...Object.keys(goodTable),
  ...praiseWords,
  ...workVerbs,
  ...typeWords.map((t) => t.phrase),
]) {
  for (const n of normsOf(phrase)) known.add(n);
}
for (const p of parts)
  for (const a of p.aspects)
    for (const phrase of [a.name, ...(a.say ?? []), ...(a.of ?? [])])
      for (const n of normsOf(phrase)) known.add(n);
for (const s of stations)
  for (const phrase of [s.name, ...s.say]) for (const n of normsOf(phrase)) known.add(n);

/** True for a word of ordinary talk or of the trade; a capitalised word that is neither is a name. */
export const isKnownWord = (norm: string): boolean =>
  known.has(norm) || known.has(singular(norm)) || /^[\d'$%.]/.test(norm);
