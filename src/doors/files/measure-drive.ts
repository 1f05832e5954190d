// Why: what a row of satellite fixes says of a drive, each number with the doubt that fixes have.

/** One fix. Degrees on WGS 84, seconds since 1970; `speed` in m/s where the receiver gave one; `segment` counts unbroken runs. */
export interface Fix {
  readonly lat: number;
  readonly lon: number;
  readonly time: string;
  readonly seconds: number;
  readonly segment: number;
  readonly speed?: number;
}
interface Measured {
  readonly value: number;
  readonly doubt: number;
}
/** Meters, seconds, m/s, m/s2; doubts are half widths of about 95 %. */
export interface Drive {
  readonly meters: number;
  readonly metersDoubt: number;
  readonly seconds: number;
  readonly secondsDoubt: number;
  readonly top?: Measured;
  readonly braking?: Measured;
  readonly notes: {
    readonly distance: string;
    readonly duration: string;
    readonly speed: string;
    readonly braking: string;
  };
}

// WGS 84 (NGA.STND.0036): equatorial radius in meters and flattening.
const equator = 6_378_137;
const flattening = 1 / 298.257223563;
/** Faster than this between two fixes is a jump of the receiver, not a drive (house default). */
const fastestBelievable = 60;
/** A receiver that stands still wanders; steps slower than this add doubt, not certainty (house default). */
const slowestBelievable = 0.5;
/** One fix against the next, 1 sigma in meters, and one receiver speed in m/s (common practice, no source). */
const fixSigma = 1;
const speedSigma = 0.15;
/** Scale error of the summed track: curves cut short (house default). */
const trackShare = 0.01;

/** Meters between two near fixes: local radii of the ellipsoid; for steps of a drive the error is below a part in a million. */
export function metersBetween(a: Pick<Fix, 'lat' | 'lon'>, b: Pick<Fix, 'lat' | 'lon'>): number {
  const rad = Math.PI / 180;
  const e2 = flattening * (2 - flattening);
  const middle = ((a.lat + b.lat) / 2) * rad;
  const w2 = 1 - e2 * Math.sin(middle) ** 2;
  const turn = ((b.lon - a.lon + 540) % 360) - 180;
  const north = (b.lat - a.lat) * rad * ((equator * (1 - e2)) / w2 ** 1.5);
  const east = turn * rad * (equator / Math.sqrt(w2)) * Math.cos(middle);
  return Math.hypot(north, east);
}

interface Moment {
  readonly t: number;
  readonly v: number;
  readonly sigma: number;
  readonly segment: number;
}

/** Needs two fixes in order of time. */
export function measureDrive(fixes: readonly Fix[]): Drive {
  let meters = 0;
  let doubtful = 0;
  let jumps = 0;
  let gaps = 0;
  for (let i = 1; i < fixes.length; i++) {
    const [a, b] = [fixes[i - 1]!, fixes[i]!];
    const seconds = b.seconds - a.seconds;
    const step = metersBetween(a, b);
    if (step / seconds > fastestBelievable) {
      jumps++;
      continue;
    }
    meters += step;
    if (step / seconds < slowestBelievable) doubtful += step;
    if (seconds > 10 || a.segment !== b.segment) {
      gaps++;
      doubtful += step * 0.2;
    }
  }
  const moments = speeds(fixes);
  const top = moments.reduce<Moment | undefined>((best, m) => (best && best.v >= m.v ? best : m), undefined);
  const braking = hardestBraking(moments);
  const seconds = fixes.at(-1)!.seconds - fixes[0]!.seconds;
  const bySpeed = fixes.some((f) => f.speed !== undefined);
  return {
    meters,
    metersDoubt: meters * trackShare + doubtful,
    seconds,
    secondsDoubt: seconds / (fixes.length - 1),
    ...(top ? { top: { value: top.v, doubt: 1.96 * top.sigma } } : {}),
    ...(braking ? { braking } : {}),
    notes: {
      distance: `Sum of ${fixes.length - 1} steps on WGS 84; ${jumps} jumps left out, ${gaps} gaps bridged by a straight line.`,
      duration: `From the first fix to the last, standing time included.`,
      speed: bySpeed ? "The receiver's own speed, median over 3 fixes." : 'Distance over 4 s.',
      braking: `Slope of a line through the speeds of 3 s, ${bySpeed ? 'receiver speeds' : 'speeds from positions'}; a shorter, harder stop reads low.`,
    },
  };
}

/** Speed at each fix where one can be told. Own speeds: median of three, so that one bad fix makes no record. */
function speeds(fixes: readonly Fix[]): readonly Moment[] {
  const found: Moment[] = [];
  for (let i = 1; i < fixes.length - 1; i++) {
    const [a, b, c] = [fixes[i - 1]!, fixes[i]!, fixes[i + 1]!];
    if (a.segment !== c.segment || c.seconds - a.seconds > 10) continue;
    if (a.speed !== undefined && b.speed !== undefined && c.speed !== undefined) {
      const middle = [a.speed, b.speed, c.speed].sort((x, y) => x - y)[1]!;
      found.push({ t: b.seconds, v: middle, sigma: speedSigma, segment: b.segment });
      continue;
    }
    let from = i;
    let to = i;
    while (from > 0 && b.seconds - fixes[from]!.seconds < 2 && fixes[from - 1]!.segment === b.segment) from--;
    while (
      to < fixes.length - 1 &&
      fixes[to]!.seconds - b.seconds < 2 &&
      fixes[to + 1]!.segment === b.segment
    )
      to++;
    const span = fixes[to]!.seconds - fixes[from]!.seconds;
    if (span <= 0 || span > 20) continue;
    const v = metersBetween(fixes[from]!, fixes[to]!) / span;
    if (v <= fastestBelievable)
      found.push({ t: b.seconds, v, sigma: (Math.SQRT2 * fixSigma) / span, segment: b.segment });
  }
  return found;
}

function hardestBraking(moments: readonly Moment[]): Measured | undefined {
  let best: Measured | undefined;
  for (let i = 0, end = 0; i < moments.length; i++) {
    const first = moments[i]!;
    while (end < moments.length && moments[end]!.t - first.t <= 3 && moments[end]!.segment === first.segment)
      end++;
    const window = moments.slice(i, end);
    if (window.length < 3) continue;
    const mean = (of: (m: Moment) => number) => window.reduce((s, m) => s + of(m), 0) / window.length;
    const [t0, v0] = [mean((m) => m.t), mean((m) => m.v)];
    const spread = window.reduce((s, m) => s + (m.t - t0) ** 2, 0);
    if (spread < 1) continue;
    const slope = window.reduce((s, m) => s + (m.t - t0) * (m.v - v0), 0) / spread;
    const left = window.reduce((s, m) => s + (m.v - v0 - slope * (m.t - t0)) ** 2, 0);
    const sigma = Math.max(first.sigma, Math.sqrt(left / Math.max(1, window.length - 2)));
    if (-slope > (best?.value ?? 0)) best = { value: -slope, doubt: (1.96 * sigma) / Math.sqrt(spread) };
  }
  return best;
}
