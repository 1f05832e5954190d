// Why: what stands on paper of the three invented units, and the invented shop's rates.

/** What the maker once printed of the model: not a reading of this unit. */
const brochure = (value: number, unit: string) => ({
  value,
  unit,
  document: 'An old brochure of the model (invented)',
});

export const ternUnit = {
  invented: true,
  kind: 'class-a-diesel',
  stock: '2417',
  name: 'Hollowell Tern 38',
  maker: 'Hollowell',
  model: 'Tern 38',
  year: 2006,
  arrived: '2026-11-21',
  walked: '2026-11-24T09:00:00-05:00',
  by: 'R. Ames',
  title: 'Appraisal walk',
  equipment: {
    slide: true,
    generator: true,
    macerator: true,
    def_system: false,
    washer_dryer: false,
    dishwasher: false,
    hydronic_unit: false,
    induction: false,
    ice_maker: false,
    outside_kitchen: false,
    protective_film: false,
    fireplace: false,
  },
  on_paper: {
    'coach.length': brochure(38.5, '[ft_i]'),
    'fuel_tank.capacity': brochure(100, '[gal_us]'),
  },
} as const;

export const dunlinUnit = {
  invented: true,
  kind: 'class-c',
  stock: '2422',
  name: 'Pennick Dunlin 24',
  maker: 'Pennick',
  model: 'Dunlin 24',
  year: 2016,
  arrived: '2026-11-12',
  walked: '2026-11-23T14:10:00-05:00',
  by: 'D. Okafor',
  title: 'First look',
  equipment: { slide: true, generator: true, solar_array: false, def_system: false, outside_kitchen: false },
  on_paper: {
    'coach.length': brochure(24.5, '[ft_i]'),
    'coach.wheelbase': brochure(158, '[in_i]'),
    'coach.height': brochure(11.2, '[ft_i]'),
    'coach.gvwr': brochure(12500, '[lb_av]'),
  },
} as const;

export const wrenUnit = {
  invented: true,
  kind: 'travel-trailer',
  stock: '2419',
  name: 'Corley Wren 19',
  maker: 'Corley',
  model: 'Wren 19',
  year: 2021,
  arrived: '2026-10-30',
  walked: '2026-11-22T10:05:00-05:00',
  by: 'D. Okafor',
  title: 'First look',
  equipment: { slide: false, generator: false, solar_array: false, outside_kitchen: false },
  on_paper: {
    'coach.length': brochure(22.1, '[ft_i]'),
    'coach.height': brochure(10.3, '[ft_i]'),
  },
} as const;

export const shop = {
  invented: true,
  labor: { default: 125 },
  hours_per_day: 6,
  supplies_percent: 4,
  hold_per_day: 31.5,
} as const;
