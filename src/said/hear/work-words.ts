// Why: the verbs of what parts do, and the good things of which there may be none.
// Trade usage (common practice, no source).

/** Verbs of a part's work: denied ("will not lock", "does not spray") they are a failure, said plainly they are working. */
export const workVerbs: readonly string[] = (
  'kick kicks kicked swing pull pulls work works worked working open opens opened opening close closes closed latch latches latched latching lock locks locked run runs ran running start starts started starting ' +
  'fire fires fired light lights lit heat heats heated cool cools cooled cooling spray sprays come comes came go goes going went extend extends extended retract retracts retracted ' +
  'charge charges charged charging hold holds held holding flush flushes flushed turn turns turned lift lifts lifted lower lowers lowered slide slides move moves moved ' +
  'operate operates operated operating function functions functioned functioning trip trips tripped engage engages engaged release releases released respond responds ' +
  'drain drains drained pump pumps pumped seal seals sealed adjust adjusts roll rolls rolled ignite ignites ignited crank cranks cranked shift shifts shifted ' +
  'blow blows blowing alarm alarms alarmed sound sounds sounded swivel swivels recline reclines tilt tilts telescope telescopes power powers stay stays spin spins shut shuts ' +
  'transfer transfers dump dumps fill fills tighten rise rises read reads register registers track tracks find finds connect connects level levels stop stops swing swings'
).split(' ');

/** Good things of which there may be none: "no heat", "no water", "no pressure". */
export const neededThings: ReadonlySet<string> = new Set(
  'heat power spark water flow light lights picture sound pressure suction charge voltage volts output response cold cooling air ignition flame fire signal display reset brakes steering juice vacuum hot continuity'.split(
    ' ',
  ),
);
