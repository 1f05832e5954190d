// Why: the words of places, as data.
import { wordTable } from './word-table.ts';

// Trade usage (common practice, no source).

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));

type Corner = readonly [side?: 'left' | 'right', end?: 'front' | 'rear', depth?: 'inner' | 'outer'];
/** Corners written or spelled as letters: "LF", "R R O". */
export const corners: Readonly<Record<string, Corner>> = wordTable<Corner>({
  lf: ['left', 'front'],
  lr: ['left', 'rear'],
  rf: ['right', 'front'],
  rr: ['right', 'rear'],
  df: ['left', 'front'],
  lro: ['left', 'rear', 'outer'],
  lri: ['left', 'rear', 'inner'],
  rro: ['right', 'rear', 'outer'],
  rri: ['right', 'rear', 'inner'],
  lor: ['left', 'rear', 'outer'],
  lir: ['left', 'rear', 'inner'],
  ror: ['right', 'rear', 'outer'],
  rir: ['right', 'rear', 'inner'],
});
export const sides: Readonly<Record<string, 'left' | 'right'>> = wordTable({
  left: 'left',
  lefthand: 'left',
  driver: 'left',
  drivers: 'left',
  "driver's": 'left',
  street: 'left',
  streetside: 'left',
  road: 'left',
  roadside: 'left',
  offdoor: 'left',
  port: 'left',
  right: 'right',
  righthand: 'right',
  passenger: 'right',
  passengers: 'right',
  curb: 'right',
  curbside: 'right',
  kerb: 'right',
  kerbside: 'right',
  copilot: 'right',
  shotgun: 'right',
  starboard: 'right',
  door: 'right',
  entry: 'right',
});
/** Sides only where "side" follows: a road, a port and a door are other things too. */
export const onlyWithSide = set('road port starboard shotgun door entry copilot');
/** Sides that are also persons or things: what follows must show that a place is meant. */
export const sideNeeds = set('driver drivers passenger passengers street curb kerb');
export const ends: Readonly<Record<string, 'front' | 'rear' | 'middle'>> = wordTable({
  front: 'front',
  fronts: 'front',
  forward: 'front',
  steer: 'front',
  steers: 'front',
  steering: 'front',
  rear: 'rear',
  rears: 'rear',
  back: 'rear',
  backs: 'rear',
  aft: 'rear',
  drive: 'rear',
  drives: 'rear',
  dual: 'rear',
  duals: 'rear',
  middle: 'middle',
  center: 'middle',
  centre: 'middle',
});
export const depths: Readonly<Record<string, 'inner' | 'outer'>> = wordTable({
  inner: 'inner',
  inners: 'inner',
  inside: 'inner',
  insides: 'inner',
  inboard: 'inner',
  outer: 'outer',
  outers: 'outer',
  outside: 'outer',
  outsides: 'outer',
  outboard: 'outer',
});
export const many = set('rears fronts backs steers drives duals outers inners insides outsides');
export const spots: Readonly<Record<string, string>> = wordTable({
  bathroom: 'bath',
  bath: 'bath',
  lavatory: 'bath',
  bedroom: 'bedroom',
  galley: 'galley',
  kitchen: 'galley',
  entry: 'entry',
  hallway: 'hall',
  cab: 'cab',
  cockpit: 'cab',
  dash: 'dash',
  tag: 'tag',
  tags: 'tag',
  bunkroom: 'bunks',
  loft: 'loft',
  living: 'living',
  closet: 'closet',
  outside: 'outside',
  exterior: 'outside',
  upper: 'upper',
  lower: 'lower',
});
/** Words that may stand between two place words of one place: "the outer one on the passenger side in back". */
export const fillers = set(
  "'s side hand the on at in of to that one corner wheel tire axle up down very position",
);
/** An end right before one of these is part of its name, not a place. */
export const notAfter = set('axle wheel cap view bumper vent seat door end hitch window');
/** "Back road", "back order": what is no place although the word stands before it. */
export const notBehindBack = set(
  'road roads yard lot order pocket and up to on in out then after when into again home around side pressure for from off ago down over through there wards him her them it with a an when of at we i you she he flush splash fed feed talk track',
);
/** Before "back": coming, going, putting back. */
export const verbBeforeBack = set(
  'go going goes gone come comes coming came put puts putting moving get gets got be turn turned bring brought kick kicks kicked clicks set cut cuts went go run ran rolls comes folds bounce bounced read dial dialed call hit fall fell sit sat step stand way pull pulls back talk hold held roll rolled slid slide tucks tuck settle take took send give gave walk walked head heading climb stop right i we you they to not straight spits spit swing swings screw climb play plug plugged look looked circle',
);
/** "Right on it", "right there": no side. */
export const adverbRight = set(
  'now there up here behind at next on in by under above over off through where away down before after along into out about around beside below inside back when to as like past from between a good fine with across against outside beneath this that it smack straight quick enough great well proud i we you if thing here we so but because for what which who',
);
/** After these "right" says that something is as it should be: "closes right". */
export const verbBeforeRight = set(
  "all that's that is 's are was looks look looking works work working worked runs run reads read fits fit closes close seats seat shuts shut latches latch sits sit got get it them just almost not isn't ain't quite about something nothing everything feels feel yeah yes done did that be seem seems doing do goes go hangs lock locks starts fires lights kicks stays pops opens comes flush so he she they you i we up out caught straight sounds sound",
);
/** After these "left" is the verb or the rest: "I left it", "half left". */
export const verbBeforeLeft = set(
  "is 's was are were been be percent he i they we she you who got get had has have 've somebody someone anybody what that which all nothing half much more some any life tread meat pad ever never just before after when since until any none anything people everybody nobody guy fella owner only until they'd i'd",
);
/** Persons do these, places do not: "the driver said". */
export const personVerbs = set(
  "was had said says told tells drove could would will can who got sits sat does did 'll 'd is has and or of to i he she they that when if gets wants want",
);
/** Nouns that a side may stand before although the catalogue does not name them. */
export const sideNouns = set(
  'slide slides sidewall wall duals dual steer tire tires wheel rear front back door doors bedroom seat corner window windows awning bay bays topper outer inner jack mirror mirrors jacks drive tag sofa bath airbag bag bags edge half one ones wiper leg legs bottle bottles battery burner drum drums hub chamber spring shock marker headlight light lights lens signal blinker chair footrest visor lamp upper lower steers hand side rail post panel cap bracket end shade gutter tail brake brakes hose tank cylinder outside inside pane stabilizer armrest recliner couch bunk nightstand closet cargo compartment high low stairs arm bottom top center middle',
);

/** Numbered things that are places: "leg two", "battery two", "axle one". */
export const numbered = set('leg battery axle zone pack bank bay cylinder line channel');
export const numberWord: Readonly<Record<string, string>> = wordTable({
  one: 'one',
  two: 'two',
  three: 'three',
  four: 'four',
  five: 'five',
  six: 'six',
  '1': 'one',
  '2': 'two',
  '3': 'three',
  '4': 'four',
  '5': 'five',
  '6': 'six',
  a: 'a',
  b: 'b',
  c: 'c',
});
