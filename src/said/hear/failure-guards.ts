// Why: a word of failure is none where somebody does it ("I cracked the door"), in a comparison, in a condition or before another noun.
import type { Clause } from './clause.ts';
import type { DefectWord } from './defect-table.ts';
import { defectPhrases, goodPhrases, partPhrases } from './lexicon.ts';
import type { Talk } from './talk.ts';

const set = (text: string): Set<string> => new Set(text.split(' '));
const people = set("i we you who somebody someone anybody anyone everybody people folks guys y'all");
const between = set(
  "just also already never ever even only have had has 'd 've 'm am was were been be always still kind of sort didn't don't not do did then really finally first gonna going about",
);
const starting = set(
  'starting started start starts beginning began begins begun tends tended wants wanted wanting likes liked seems seemed appears appeared begin tend want like seem appear trying going gone',
);
const modals = set(
  "can could would might should may must let's lets cannot couldn't wouldn't shouldn't please",
);
const perceive =
  /^(?:look|looks|looked|looking|feel|feels|felt|sound|sounds|sounded|smell|smells|smelled|smelling|seem|seems|noise|something|more|anything)$/;
const afterSoft = /^(?:start|starter|close|touch|light|lights|beam|beams|copy|top)$/;
/** Words that may follow a failure said of a thing; another word behind an adjective is the thing itself. */
const closing = set(
  "anywhere somewhere everywhere nowhere somewheres and or but at on in by under over around along near from with to for of inside behind above below across through after before when while if because as than that this there here where again too also now right left up down out off all both it they he she i we you one ones so yet anyway already pretty real really enough though the a an my his her its your is are was were 's bit little like since until between underneath about who which then still not no only just every most more some any each back front top bottom day time times overnight last badly bad good yeah yep yes okay ok sure maybe probably",
);
/** What the speaker has along, and people: not the coach's. */
const ofSpeaker = set(
  'phone phones paper pen pencil glove gloves hand hands finger fingers knee knees palm nose sock socks boot boots voice cup flashlight notebook clipboard tape head ears eyes fella guy kid dog cat lead leads probe jacket coat rag sleeve pants mic microphone recorder joke stuff idea luck news weather',
);
const isLinking = (n: string): boolean => /^(?:is|was|'s|are|were|'re|got|gets|went|just|has)$/.test(n);
/** Nouns that are a place on the thing. */
const placesOn = set(
  'screen screens display displays pane panes mesh net nets zipper zippers wheel wheels leg legs foot feet button buttons glasses window windows crystal door doors mirror lamp lamps plug plugs cable cables pipe pipes tube tubes hook hooks clip clips case cases body bodies shroud shrouds spot spots area areas place places edge edges corner corners side sides end ends section sections piece pieces patch patches line lines part parts board boards seam seams joint joints seal seals lens lenses bulb bulbs glass wire wires bolt bolts screw screws bracket brackets hinge hinges latch latches spring springs handle handles blade blades cell cells post posts pin pins hose hoses fitting fittings bearing bearings bushing bushings wood paneling panel panels trim fabric leather vinyl carpet tile tiles rubber caulk caulking sealant sealer weld welds rivet rivets strap straps fuse fuses breaker breakers switch switches knob knobs cap caps cover covers lid lids vent vents duct ducts ring rings mark marks streak streaks stain stains rail rails skin membrane paint clear gel coat coating plastic metal steel aluminum aluminium foam insulation connection connections terminal terminals motor motors fan fans',
);

/** Words that are a failure in one sentence and nothing in another, by what follows or comes before. */
function isHarmlessWord(talk: Talk, clause: Clause, i: number, length: number): boolean {
  const norm = (k: number): string => talk.marks.words[k]?.norm ?? '';
  const n = norm(i);
  const next = talk.marks.words[i + length - 1]?.stop === 0 ? norm(i + length) : '';
  // "that battery's done": of what is used up; "the roof is done" is work
  if (/^(?:'s|is|are|'re)$/.test(n) && norm(i + 1) === 'done')
    return !/batter|tire|alarm|belts|shocks/.test(talk.partFor(i, i + length, clause) ?? '');
  if (
    /^settle[sd]?$/.test(n) &&
    next === 'down' &&
    /^(?:on|at|to|in|nice|nicely|fine|after|once|and|real|right)$/.test(norm(i + 2))
  )
    return true;
  if (n === 'lock' || n === 'locks' || n === 'locked') return next === 'at' || next === 'tight';
  // "you smell gas. Not strong, but it's there": how much of what was just said
  if (n === 'not' && norm(i + 1) === 'strong') return talk.fault !== undefined && i - talk.fault.at < 12;
  // "runs hot and cold", "runs warm water": what a tap does
  if (/^(?:hot|warm)$/.test(norm(i + length - 1)) && /^(?:and|or|water)$/.test(next))
    return next === 'water' || norm(i + length + 1) === 'cold';
  if (length > 1) return n === 'smells' && norm(i + 1) === 'like' && /^(?:new|a)$/.test(next);
  if (n === 'soft') return afterSoft.test(next) && norm(i + length + 1) !== 'to';
  // only what should be soft is spoilt by being hard
  if (n === 'hard')
    return (
      !/^(?:|and|now|as|too|but|in|at|on|from)$/.test(next) ||
      !/^(?:slide_seals|roof_sealant|sealant_side|wipers_washers|windows_side|valve_stems|belts_hoses)$/.test(
        talk.partFor(i, i + 1, clause) ?? '',
      )
    );
  if (n === 'low')
    return /^(?:beam|beams|profile|miles|mile|hours|mileage|and|power|voltage|range|gear|point|points|pressure)$/.test(
      next,
    );
  // "a fault code, low battery": what the code says
  if (n === 'low' && /^(?:battery|batteries|voltage)$/.test(next))
    return (
      /^(?:code|codes|fault|error|alarm|warning|says|flashing)$/.test(norm(i - 1)) ||
      /^(?:code|codes|fault|error)$/.test(talk.marks.words[i - 1]?.norm ?? '')
    );
  if (n === 'gone' || n === 'lost')
    return /^(?:have|has|i|we|you|'ve)$/.test(norm(i - 1)) || next === 'through';
  if (n === 'flat')
    return (
      /^(?:screen|floor|towing|spot|tow|roof|top|and|out|bed|ground|on|against)$/.test(next) ||
      /^(?:a|down|the|lay|lays|laid|from|lies)$/.test(norm(i - 1)) ||
      talk.marks.numberAt.to(i) !== undefined ||
      !/^(?:tire|spare_tire|\w*battery\w*|suspension_air|horn|inverter_charger|lp_tank|air_tanks|extinguisher|coach|slide_seals)$/.test(
        talk.partFor(i, i + 1, clause) ?? '',
      )
    );
  if (n === 'plugged') return /^(?:in|into|it|to|up)$/.test(next) && norm(i + 2) !== 'with';
  if (n === 'shot') return norm(i - 1) === 'a' || /^(?:of|at|with|it|a)$/.test(next);
  if (n === 'fault' || n === 'faults')
    return norm(i - 1) === 'ground' || /^(?:my|your|his|nobody's)$/.test(norm(i - 1));
  if (n === 'fails' || n === 'fail') return norm(i + 1) === 'it' || norm(i - 1) === 'that';
  if (/^smells?$/.test(n))
    return /^(?:dry|clean|new|fine|good|fresh|nice|great)$/.test(next) || next === 'like' || next === 'it';
  if (n === 'warm')
    return (
      talk.scopes.denied[i] === 1 ||
      !/^(?:dash_ac|ac_run|ac_roof|refrigerator|wheel_bearings|shore_cord|tire)$/.test(
        talk.partFor(i, i + 1, clause) ?? '',
      )
    );
  if (/^(?:surge|pop|pops|bang)$/.test(n))
    return (
      /^(?:protector|guard|tank|up|out|open|brake|the|it|right)$/.test(next) ||
      (n === 'pop' && norm(i - 1) === 'a')
    );
  if (n === 'tick' || n === 'ticks')
    return /^(?:wrong|right|a|every|each)$/.test(norm(i - 1)) || talk.marks.numberAt.to(i) !== undefined;
  // "eleven in the inside groove": a place on the tread
  if (/^grooves?$/.test(n))
    return /^(?:inside|inner|outside|outer|center|centre|middle|main|tread|shoulder|rain|each|every|all|the|one)$/.test(
      norm(i - 1),
    );
  if (n === 'loud') return norm(i - 1) === 'out';
  if (n === 'ground' || n === 'grounds') return true;
  if (n === 'burns' || n === 'burn' || n === 'lights')
    return !/^(?:mark|marks|hole|holes|spot|spots|oil)$/.test(next) && !/^(?:cigarette|a)$/.test(norm(i - 1));
  if (n === 'broke' || n === 'broken')
    return (
      next === 'in' &&
      !/^(?:the|two|half|three|places|one|a|several|there|here|bedroom|bathroom)$/.test(norm(i + 2))
    );
  if (n === 'smoke') return /^(?:detector|alarm|alarms|detectors|test|free)$/.test(next);
  if (n === 'cracked' || n === 'crack') return next === 'open' || next === 'it';
  if (/^split/.test(n) && /^(?:system|bath|level|king|shaft|tank)$/.test(next)) return true;
  if (/^(?:settle[sd]?|leans)$/.test(n)) return next === 'in' || (next === 'down' && norm(i + 2) === 'on');
  // the split of an air conditioner is what it cools by
  if (n === 'split' || n === 'splits')
    if (
      /^(?:degree|degrees|temp|temperature|good|nice|delta|decent|air)$/.test(norm(i - 1)) ||
      talk.marks.numberAt.to(i) !== undefined ||
      (/^(?:of|was|is)$/.test(next) && /^(?:ac_|ducts|thermo)/.test(talk.recent[0]?.parts[0] ?? ''))
    )
      return true;
  if (/^freez/.test(n) && /^(?:you|me|us|ya)$/.test(next)) return true;
  // bypassed for the winter is no fault
  if (/^bypass/.test(n))
    return talk.marks.words
      .slice(Math.max(0, i - 14), i + 14)
      .some((w) => /^(?:winter\w*|antifreeze|freeze|freezing|cold|storage)$/.test(w.norm));
  if (n === 'rips' || n === 'bubble') return next === 'through' || next === 'level';
  if (n === 'dark')
    return (
      !/^(?:stays?|is|'s|stayed|goes|went|are)$/.test(norm(i - 1)) ||
      (closing.has(next) === false && next !== '')
    );
  if (/^(?:tired|sad|finished|garbage|scrap|dry|sour|stale|blank|lying|funky)$/.test(n))
    return next !== '' && !closing.has(next);
  if (n === 'freeze' || n === 'freezes') return next === 'point' || next === 'plug' || next === 'protection';
  if (n === 'sink' || n === 'sinks')
    return !/^(?:it|they|jacks?|corner|slide|room|nothing|floor|which|slowly|ones?|side|and)$/.test(
      norm(i - 1),
    );
  if (/^scratch$/.test(n)) return next === 'that' || next === 'it';
  if (/^slow(?:ly|er)?$/.test(n))
    return (
      !/^(?:is|'s|are|'re|was|were|real|really|pretty|little|bit|run|runs|move|moves|come|comes|go|goes|going|too|very|kinda|so|awful|awfully|hair|tad|ran|somewhat|pulls|cools|heats|opens|closes|fills|drains|charges|cranks|turns|retracts|extends|lifts|painfully|going|coming|moving|draining|opening|closing|filling|turning|cooling|heating|charging|working|cranking|retracting|extending|being|kind|sort|of|up|down|in|out|it|them|seems|mighty)$/.test(
        norm(i - 1),
      ) &&
      !/^(?:to|leak|on|going|coming|drip|leaks|retract|extend|crank|response)$/.test(next) &&
      i > clause.from + 1 &&
      !clause.mentions.some((m) => m.to === i)
    );
  // tape, decals and skins are meant to stick
  if (
    /^(?:stuck|sticks?|sticking)$/.test(n) &&
    /^(?:down|good|well|tight|fast|great|fine|solid|firm)$/.test(next)
  )
    return true;
  if (
    n === 'stuck' &&
    /^(?:roof_|body_paint|protective_film|sealant_side|sidewall)/.test(talk.partFor(i, i + 1, clause) ?? '')
  )
    return true;
  if (/^racks?$/.test(n)) return clause.mentions.some((m) => m.from <= i && i < m.to);
  if (/^stick|^stuck|^sticks/.test(n) && (next === 'to' || next === 'with')) return n !== 'stuck';
  if (n === 'blank' && norm(i - 1) === 'a') return true;
  if (n === 'short') return true;
  if (n === 'spit' || n === 'sweat' || n === 'lie') return true;
  if (/^sag/.test(n)) return next === 'to';
  if (n === 'break' && /^(?:pads?|lights?|controller|fluid|drums?|shoes?|lines?|pedal)$/.test(next))
    return true;
  if (/^quits?$/.test(n))
    return (
      /ing$/.test(next) ||
      /^(?:like|at)$/.test(next) ||
      talk.marks.words
        .slice(clause.from, i)
        .some((w) => /^(?:comes?|came|kicks?|starts|cycles)$/.test(w.norm))
    );
  if (n === 'quit') return norm(i - 1) === 'and' && next === 'like';
  return false;
}

/** True where a word of failure at `i` says nothing of the kind. */
export function isNoFailure(
  talk: Talk,
  clause: Clause,
  i: number,
  length: number,
  word: DefectWord,
): boolean {
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from ? (words[k]?.norm ?? '') : '');
  if (isHarmlessWord(talk, clause, i, length)) return true;
  const before = norm(i - 1);
  // what is plainly a noun here is not the verb: "the wash rack", "a cup"
  if (word.verb === 'base' && !word.noun && /^(?:the|a|an|this|that|my|your|of|one|each)$/.test(before))
    return true;
  if (
    word.aspect === 'smell' &&
    word.verb === 'base' &&
    (i + length >= clause.to || modals.has(before)) &&
    length === 1 &&
    !/^(?:the|a|no|any|of|bad|funny|odd|strange|some|faint|slight|strong|musty)$/.test(before)
  )
    return true;
  if (
    (ofSpeaker.has(norm(i - 1)) &&
      !clause.mentions.some((m) => m.to >= i - 1 && m.to <= i && m.from < i - 1)) ||
    (ofSpeaker.has(norm(i - 2)) && isLinking(before)) ||
    ofSpeaker.has(norm(i + length))
  )
    return true;
  if (word.verb && word.verb !== 's' && word.aspect !== 'smell') {
    let k = i - 1;
    while (k >= clause.from && between.has(norm(k))) k--;
    if (people.has(norm(k)) && !(word.verb === 'base' && word.noun && k < i - 1)) return true;
  }
  if (word.verb === 'base' && before === 'to' && !starting.has(norm(i - 2))) return true;
  if (word.verb === 'base' && (modals.has(before) || modals.has(norm(i - 2))) && !word.noun) return true;
  const lead = /^(?:and|but|so|well|now)$/.test(norm(clause.from))
    ? norm(clause.from + 1)
    : norm(clause.from);
  if (
    /^(?:if|unless|whether|until)$/.test(lead) ||
    (/^(?:so|and)$/.test(lead) && norm(clause.from + 1) === 'if')
  )
    return true;
  for (let k = i - 1; length < 3 && k >= Math.max(clause.from, i - 4); k--) {
    if (
      norm(k) === 'like' &&
      k > clause.from &&
      !perceive.test(norm(k - 1)) &&
      !/^(?:to|not)$/.test(norm(k - 1))
    )
      return true;
    if (norm(k) === 'as' && k < i - 1 && /^(?:a|an|the)$/.test(norm(k + 1)) && k > clause.from) return true;
  }
  if (/^(?:my|our)$/.test(norm(i - 2)) && partPhrases.at(words, i - 1) === undefined) return true;
  return (
    word.verb === undefined &&
    word.noun === undefined &&
    length === 1 &&
    !/^(?:it|they|that|she|he|one|this|these|those|which|both|all)$/.test(lead) &&
    isBeforeNoun(talk, clause, i + length) &&
    !clause.mentions.some((m) => m.to <= i)
  );
}

/** "wet sock": the failure stands before a thing that is no part and no place on one. */
function isBeforeNoun(talk: Talk, clause: Clause, end: number): boolean {
  const { words } = talk.marks;
  const n = words[end]?.norm ?? '';
  return (
    end < clause.to &&
    words[end - 1]?.stop === 0 &&
    !closing.has(n) &&
    !placesOn.has(n) &&
    !/(?:ly|ing)$/.test(n) &&
    !/^\d/.test(n) &&
    defectPhrases.at(words, end) === undefined &&
    goodPhrases.at(words, end) === undefined &&
    partPhrases.at(words, end) === undefined &&
    talk.marks.numberAt.from(end) === undefined &&
    talk.marks.placeAt.from(end) === undefined
  );
}
