// Why: what goes wrong in a room: doors off their tracks, curling floors, blotches, shades that drop, water that got in; made from verbs and nouns.
// Plain English and trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';

type Row = readonly [aspect: string, state: State, phrases: string, more: { readonly noun?: true }];
const rows: Row[] = [];
const noun = { noun: true } as const;
const say = (aspect: string, state: State, phrases: string, more: { readonly noun?: true } = {}): void => {
  rows.push([aspect, state, phrases, more]);
};

say(
  'operates',
  'fails',
  'went black, went dark, went blank, gone dark, gone blank, goes black, goes dark, goes blank, blacked out, blank screen, black screen, no picture, no sound',
);
say(
  'operates',
  'poor',
  'lines across, lines on the screen, lines in the picture, snowy, fuzzy, ghosting, pixelated, grainy, scratchy sound, static',
);
say(
  'operates',
  'stuck',
  [
    'jumped',
    'came',
    'comes',
    'popped',
    'slipped',
    'fell',
    'hopped',
    'jumps',
    'pops',
    'slips',
    'knocked',
    'is',
    "'s",
    'come',
    'run',
  ]
    .flatMap((v) =>
      ['its', 'the', 'it'].flatMap((d) =>
        [
          'track',
          'tracks',
          'rail',
          'rails',
          'roller',
          'rollers',
          'runner',
          'runners',
          'slides',
          'glide',
          'glides',
          'hinge',
          'hinges',
          'guide',
        ].map((t) => `${v} off ${d} ${t}`),
      ),
    )
    .concat([
      'jumped the track',
      'jumps the track',
      'off the rail',
      'off the rails',
      'off its rail',
      'off the rollers',
      'off its rollers',
      'off the runners',
      'out of its track',
      'out of the track',
    ])
    .join(', '),
);
say(
  'operates',
  'unhooked',
  [
    "isn't",
    "ain't",
    "wasn't",
    "aren't",
    "weren't",
    'isnt',
    'never',
    'not been',
    "hasn't been",
    'never been',
    'never got',
  ]
    .flatMap((n) =>
      ['hooked up', 'connected', 'plumbed', 'plumbed in', 'wired', 'wired up', 'wired in', 'plugged in'].map(
        (v) => `${n} ${v}`,
      ),
    )
    .join(', '),
);
say(
  'sag',
  'sagging',
  'dip, body print, body impression, valley, trough, sway back, swayback, a hollow',
  noun,
);
say('strength', 'weak', 'dim, dimly lit, faint, burns dim, too dim');
say(
  'wear',
  'worn',
  'worn through, rubbed through, worn bare, worn thin, wore thin, wore through, matted, matted down, flattened out, broke down, broken down, caved in, packed down',
);
say(
  'damage',
  'torn',
  'slit, slits, unstitched, seam is out, stitching is out, seam let go, clawed, cat scratched, cat scratches, snagged, pulled threads, unraveling, unravelling, raveling, coming unraveled',
);
say('loose', 'loose', 'wobble, wobbling, wobbled, tippy, rickety, shaky, flops around, flops');
say(
  'separated',
  'separated',
  'curling, curling up, curled, curled up, curls, curls up, pulling loose, pulled loose, come loose, came loose, came unglued, coming unglued, let loose, popped loose, buckled, buckling, buckles, lifts up',
);
say('missing', 'missing', 'unaccounted for, gone missing, went missing, got lost, lost to time');
say(
  'stain',
  'stained',
  'blotch, blotches, splotch, splotches, tea stain, tea stains, coffee stain, coffee stains, rust stain, rust stains, blemish, blemishes, discoloring, discolouration, halo, tide marks, drip mark, drip marks, run marks, spotting, grease stain, grease spot, grease spots, pet stain, pet stains',
  noun,
);
say(
  'leak',
  'leaking',
  ['water', 'rain', 'moisture', 'weather']
    .flatMap((w) =>
      [
        'got',
        'came',
        'comes',
        'gets',
        'gotten',
        'ran',
        'runs',
        'getting',
        'coming',
        'found its way',
        'works its way',
        'blew',
      ].map((v) => `${w} ${v} in`),
    )
    .concat([
      'let water in',
      'lets water in',
      'took on water',
      'taken on water',
      'leaked in',
      'leaks in',
      'rained in',
      'leak came in',
    ])
    .join(', '),
);
say(
  'operates',
  'drifting',
  [
    'drops',
    'drop',
    'falls',
    'fall',
    'comes down',
    'come down',
    'rolls down',
    'roll down',
    'slides down',
    'creeps down',
    'sinks',
    'creeps out',
    'fell',
    'lowers',
    'rolls up',
    'lets down',
  ]
    .flatMap((v) =>
      ['by itself', 'by themselves', 'all by itself', 'all by themselves', 'on its own', 'on their own'].map(
        (b) => `${v} ${b}`,
      ),
    )
    .join(', '),
);
say(
  'operates',
  'stuck',
  ['jump', 'jumps', 'jumped', 'skip', 'skips', 'skipped', 'jumping', 'left', 'leaves']
    .flatMap((v) =>
      ['its', 'the'].flatMap((d) => ['track', 'tracks', 'rail', 'rails'].map((t) => `${v} ${d} ${t}`)),
    )
    .join(', '),
);
say('missing', 'missing', 'nowhere to be seen, never came with it, somebody took');

/** Failures of rooms and furniture: aspect, state, phrases, and whether they can be denied as nouns. */
export const roomFailures: readonly Row[] = rows;
