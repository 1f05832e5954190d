// Why: a roof is closed before a ceiling is hung; doing work in the wrong order means doing it twice.
// Common practice, no source.

/** One defect's work that must come before others', by defect id. */
export interface WorkOrder {
  readonly first: string;
  readonly next: readonly string[];
  readonly why: string;
}

export const workOrders: readonly WorkOrder[] = [
  {
    first: 'd042',
    next: ['d103', 'd104', 'd105', 'd130', 'd114'],
    why: 'close the roof before opening or finishing anything inside',
  },
  { first: 'd043', next: ['d103', 'd104', 'd105'], why: 'reseal before ceiling and wall repair' },
  { first: 'd044', next: ['d051', 'd054', 'd104', 'd135'], why: 'seam first or the wall gets wet again' },
  { first: 'd045', next: ['d046', 'd105', 'd138'], why: 'decking before units and ceiling go back' },
  { first: 'd122', next: ['d051', 'd104'], why: 'side sealant before wall rebond' },
  { first: 'd132', next: ['d128'], why: 'gasket before dash trim' },
  { first: 'd061', next: ['d065'], why: 'topper before slide floor' },
  { first: 'd064', next: ['d065'], why: 'seals before slide floor' },
  { first: 'd095', next: ['d106', 'd123'], why: 'plumbing leak before floor or belly' },
  { first: 'd096', next: ['d094'], why: 'split fittings before judging the pump' },
  { first: 'd101', next: ['d123'], why: 'tank before belly panel' },
  { first: 'd106', next: ['d098', 'd107'], why: 'deck before shower pan and floor covering' },
  { first: 'd017', next: ['d001', 'd003'], why: 'suspension before tires and alignment' },
  { first: 'd018', next: ['d003'], why: 'shocks before final alignment' },
  { first: 'd019', next: ['d001', 'd003'], why: 'steering joints before tires and alignment' },
  { first: 'd016', next: ['d003'], why: 'ride height before alignment' },
  { first: 'd001', next: ['d003'], why: 'new tires before final alignment' },
  { first: 'd012', next: ['d001'], why: 'brake work while wheels are off, before tires go on' },
  { first: 'd015', next: ['d012'], why: 'seal before lining it would soak' },
  { first: 'd009', next: ['d008'], why: 'chamber before stroke is judged' },
  { first: 'd010', next: ['d011'], why: 'dry air before leak hunt' },
  {
    first: 'd116',
    next: ['d119', 'd067', 'd051', 'd052'],
    why: 'frame opinion before money on anything hung from it',
  },
  {
    first: 'd031',
    next: ['d025', 'd052', 'd053', 'd115'],
    why: 'engine decision before cooler, paint and decals',
  },
  { first: 'd120', next: ['d069'], why: 'stop overcharging before new batteries' },
  { first: 'd071', next: ['d069'], why: 'charger proven before new batteries' },
  { first: 'd133', next: ['d069'], why: 'engine charging proven before new batteries' },
  { first: 'd032', next: ['d030'], why: 'good start batteries before chasing codes' },
  { first: 'd069', next: ['d063', 'd068'], why: 'charged bank before slide and level faults' },
  { first: 'd066', next: ['d063', 'd067'], why: 'hydraulic leak before slide and jacks' },
  { first: 'd072', next: ['d046', 'd047', 'd071'], why: 'clean power before blaming loads' },
  { first: 'd073', next: ['d046', 'd047'], why: 'cord end before A/C' },
  { first: 'd087', next: ['d089'], why: 'regulator before the drop test' },
  {
    first: 'd089',
    next: ['d080', 'd082', 'd084', 'd090'],
    why: 'gas tight before any gas appliance is judged',
  },
  { first: 'd104', next: ['d114', 'd109'], why: 'dry walls before odor and trim' },
  { first: 'd130', next: ['d114'], why: 'mold out before odor work' },
  { first: 'd129', next: ['d114', 'd074'], why: 'nest out before wiring is signed off' },
  { first: 'd115', next: ['d052'], why: 'decals off before clear coat' },
  { first: 'd124', next: ['d125'], why: 'title plan before booking third-party work' },
];
