// Why: a drive log as a phone would write it, from a small simulator whose truth is known, so that what is measured from it can be checked.
import { dice, normal } from './dice.ts';

/**
 * What the simulated coach is. Mass and power are those of the demo's plates; drag and rolling resistance are ordinary
 * values for a coach (wide priors, not measurements).
 */
export const truth = {
  massKg: 12764,
  wheelPowerW: 200_000,
  dragAreaM2: 5.7,
  rolling: 0.008,
  airDensity: 1.18,
  brakeMs2: 3.1,
  seed: 2417,
} as const;

export interface Sample {
  readonly t: number;
  readonly east: number;
  readonly north: number;
  readonly up: number;
  readonly speed: number;
  readonly accel: number;
}

interface Leg {
  /** Target speed in m/s, length in m, heading in degrees, grade as a fraction. */
  readonly to: number;
  readonly length: number;
  readonly heading: number;
  readonly grade: number;
}

const mph = 0.44704;
const legs: readonly Leg[] = [
  { to: 25 * mph, length: 900, heading: 80, grade: 0 },
  { to: 45 * mph, length: 2600, heading: 60, grade: 0.004 },
  { to: 62 * mph, length: 6200, heading: 40, grade: 0.002 },
  { to: 55 * mph, length: 1800, heading: 30, grade: 0.035 },
  { to: 0, length: 0, heading: 30, grade: 0 },
  { to: 62 * mph, length: 5200, heading: 215, grade: -0.004 },
  { to: 35 * mph, length: 1500, heading: 245, grade: 0 },
  { to: 0, length: 0, heading: 260, grade: 0 },
];

/** The drive at 10 samples a second: full throttle up to each leg's speed, then holding it, braking at the end. */
export function simulate(): readonly Sample[] {
  const samples: Sample[] = [];
  const dt = 0.1;
  let t = 0;
  let v = 0;
  let east = 0;
  let north = 0;
  let up = 210;
  for (const leg of legs) {
    const heading = (leg.heading * Math.PI) / 180;
    let gone = 0;
    let standing = 0;
    while (leg.to > 0 ? gone < leg.length : standing < 12) {
      const road =
        truth.rolling * truth.massKg * 9.81 +
        truth.massKg * 9.81 * leg.grade +
        0.5 * truth.airDensity * truth.dragAreaM2 * v * v;
      const push = Math.min(truth.wheelPowerW / Math.max(v, 2.5), 42_000);
      let a = (push - road) / (truth.massKg * 1.05);
      if (v > leg.to + 0.15) a = Math.max(-truth.brakeMs2, (leg.to - v) / dt);
      else if (v + a * dt > leg.to) a = (leg.to - v) / dt;
      v = Math.max(0, v + a * dt);
      if (v === 0) standing += dt;
      gone += v * dt;
      east += v * dt * Math.sin(heading);
      north += v * dt * Math.cos(heading);
      up += v * dt * leg.grade;
      t += dt;
      samples.push({ t, east, north, up, speed: v, accel: a });
    }
  }
  return samples;
}

// Somewhere in the ocean, so that the invented drive is on nobody's street.
const lat0 = -48.2;
const lon0 = -123.4;
const perDegree = 111_195;

/** The drive as GPX 1.1, one fix a second, with the scatter of a phone (1.5 m, slowly wandering). */
export function toGpx(samples: readonly Sample[], began: string): string {
  const roll = dice(truth.seed);
  let wanderEast = 0;
  let wanderNorth = 0;
  const start = Date.parse(began);
  const points = samples
    .filter((_, i) => i % 10 === 0)
    .map((s) => {
      wanderEast = wanderEast * 0.97 + normal(roll) * 0.35;
      wanderNorth = wanderNorth * 0.97 + normal(roll) * 0.35;
      const lat = lat0 + (s.north + wanderNorth) / perDegree;
      const lon = lon0 + (s.east + wanderEast) / (perDegree * Math.cos((lat0 * Math.PI) / 180));
      return `   <trkpt lat="${lat.toFixed(7)}" lon="${lon.toFixed(7)}"><ele>${(s.up + normal(roll) * 2).toFixed(1)}</ele><time>${new Date(start + s.t * 1000).toISOString()}</time></trkpt>`;
    });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="an invented drive of an invented unit" xmlns="http://www.topografix.com/GPX/1/1">\n <trk><name>Invented drive</name><trkseg>\n${points.join('\n')}\n </trkseg></trk>\n</gpx>\n`;
}

/** The phone's motion, ten rows a second: t in s, ax forward, ay left, az up in m/s2, gravity taken off. */
export function toMotionCsv(samples: readonly Sample[]): string {
  const roll = dice(truth.seed + 1);
  const rows = samples.map((s) => {
    // A wheel out of balance shows near 62 mph: 500 turns a mile.
    const shake =
      Math.exp(-(((s.speed - 62 * mph) / 1.6) ** 2)) *
      0.5 *
      Math.sin(2 * Math.PI * (s.speed / mph) * (500 / 3600) * s.t);
    return [
      s.t,
      s.accel + normal(roll) * 0.08,
      normal(roll) * 0.1,
      shake + normal(roll) * 0.15 * (0.2 + s.speed / 25),
    ]
      .map((n) => n.toFixed(3))
      .join(',');
  });
  return `t,ax,ay,az\n${rows.join('\n')}\n`;
}
