// Why: words that name a part only in some company, and words that are a verb as often as a part, as data.
// Trade usage (common practice, no source).
import { wordTable } from './word-table.ts';

const words_ = (text: string): Set<string> => new Set(text.split(' '));
export const verbWhen = words_(
  "it that they this to will all both 'll can does not won't don't doesn't which one just and still you i we doesnt didn't both's who everything them rest others ones most she he never always only now actually we'll they'll it'll",
);

export const verbish = words_(
  'lights light slides slide heat heats seals seal vents pumps pump drains drive drives steers dump dumps plugs plug step stop covers brake brakes screens shades tracks shocks jacks flush flushes levels alarms alarm latches latch locks lock cranks crank hooks hook',
);

export const verbAfter = words_(
  'first right off up on fine every great good ok okay in out easily both nice easy straight true light smooth smoothly nicely heavy hard tight well',
);

/** Words that name a part only where its family is talked about. */
export const family: Readonly<Record<string, RegExp>> = wordTable({
  house: /batter|disconnect/,
  chassis: /batter|disconnect/,
  cell: /batter/,
  cells: /batter/,
  bank: /batter/,
  packs: /batter/,
  drives: /^tire/,
  steers: /^tire/,
  outers: /^tire/,
  inners: /^tire/,
  tank: /^(?:lp_|fuel_)/,
  tanks: /^(?:lp_|fuel_)/,
  seals:
    /^slide|window|door|awning|toilet|refrigerator|^oven|microwave|shower|skylight|dump_valves|dishwasher/,
  seal: /^slide|window|door|awning|toilet|refrigerator|^oven|microwave|shower|skylight|dump_valves|dishwasher/,
  battery: /^(?!.*(?:_alarm|keys_|thermostat|remote|tpms))/,
  batteries: /^(?!.*(?:_alarm|keys_|thermostat|remote|tpms))/,
});

/** Words that name no part right after one of these. */
export const unless: Readonly<Record<string, RegExp>> = wordTable({
  cord: /^tire/,
  surge: /^(?:generator|engine|slide|inverter|front_engine)/,
  surges: /^(?:generator|engine|slide|inverter|front_engine)/,
  belt: /seat/,
  steps: /^ladder/,
});

/** Words that name a part only when one of these follows. */
export const followed: Readonly<Record<string, RegExp>> = wordTable({
  smokes: /^(?:pass|test|work|are|both|all|okay)$/,
  smoke: /^(?:okay|ok|good|works|passes|passed|tests|alarms|tested)$/,
  chassis: /^(?:one|two|battery|batteries|resting|three|four|bank|side|disconnect)$/,
});
