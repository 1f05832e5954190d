// Why: a list of units offered elsewhere, from a documented, seeded generator whose price law is known.
import { dice, normal } from './dice.ts';

/**
 * The law the invented prices are drawn from: a class A diesel of 2006, 38 ft, 60,000 miles and 3 slides asks $74,000; each
 * model year is worth 5.5 %, each foot $1,900, each slide $3,200, each mile over or under 12 cents; the rest is noise of 7 %.
 * The other kinds have laws of the same form.
 */
export const laws = {
  'class-a-diesel': {
    base: 74_000,
    year: 2006,
    yearly: 0.055,
    length: 38,
    perFoot: 1900,
    slides: 3,
    perSlide: 3200,
    miles: 60_000,
    perMile: 0.12,
    share: 0.55,
  },
  'class-c': {
    base: 58_000,
    year: 2016,
    yearly: 0.07,
    length: 26,
    perFoot: 1100,
    slides: 1,
    perSlide: 2600,
    miles: 40_000,
    perMile: 0.15,
    share: 0.27,
  },
  'travel-trailer': {
    base: 17_500,
    year: 2020,
    yearly: 0.09,
    length: 21,
    perFoot: 500,
    slides: 0,
    perSlide: 1800,
    miles: 0,
    perMile: 0,
    share: 0.18,
  },
} as const;

const states = ['north yard', 'lake yard', 'plains yard', 'coast yard', 'south yard'];

/** 150 rows of `ref,on,kind,year,length_ft,miles,slides,hp,generator_hours,ask,sold,state,miles_away,condition`. */
export function comparablesCsv(seed: number, count = 150): string {
  const roll = dice(seed);
  const rows: string[] = [
    'ref,on,kind,year,length_ft,miles,slides,hp,generator_hours,ask,sold,state,miles_away,condition',
  ];
  const start = Date.UTC(2026, 4, 20);
  for (let i = 0; i < count; i++) {
    const share = roll();
    const kind = share < 0.55 ? 'class-a-diesel' : share < 0.82 ? 'class-c' : 'travel-trailer';
    const law = laws[kind];
    const year = Math.round(law.year + normal(roll) * 2.6);
    const length = Math.round((law.length + normal(roll) * 2) * 2) / 2;
    const slides = Math.max(0, Math.round(law.slides + normal(roll) * 0.8));
    const miles = law.miles ? Math.max(4000, Math.round(law.miles + normal(roll) * 22_000)) : undefined;
    const hp =
      kind === 'class-a-diesel' ? [300, 330, 350, 350, 370, 400][Math.floor(roll() * 6)]! : undefined;
    const generatorHours = kind === 'travel-trailer' ? undefined : Math.round(200 + roll() * 1500);
    const fair =
      law.base * (1 + law.yearly) ** (year - law.year) +
      (length - law.length) * law.perFoot +
      (slides - law.slides) * law.perSlide -
      ((miles ?? 0) - law.miles) * law.perMile;
    const ask = Math.round((fair * (1 + normal(roll) * 0.07)) / 100) * 100 - 100;
    const sold = roll() < 0.22 ? Math.round((ask * (0.93 + roll() * 0.05)) / 100) * 100 : undefined;
    const on = new Date(start + Math.floor(roll() * 185) * 86_400_000).toISOString().slice(0, 10);
    const where = Math.floor(roll() * states.length);
    rows.push(
      [
        `invented-${String(i + 1).padStart(3, '0')}`,
        on,
        kind,
        year,
        length,
        miles ?? '',
        slides,
        hp ?? '',
        generatorHours ?? '',
        ask,
        sold ?? '',
        states[where],
        Math.round(30 + roll() * 1200),
        '',
      ].join(','),
    );
  }
  return `${rows.join('\n')}\n`;
}
