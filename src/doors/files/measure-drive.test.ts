// Why: a road test's numbers are checked against drives whose answer is known beforehand.
import { describe, expect, test } from 'vitest';
import { type Fix, measureDrive, metersBetween } from './measure-drive.ts';

/** A drive north: position in meters at each second -> fixes, one a second. */
function drive(
  meters: (t: number) => number,
  seconds: number,
  noise: (t: number) => number = () => 0,
  speed?: (t: number) => number,
): Fix[] {
  const perDegree = metersBetween({ lat: 31, lon: -97 }, { lat: 31.001, lon: -97 }) * 1000;
  return Array.from({ length: seconds + 1 }, (_, t) => ({
    lat: 31 + (meters(t) + noise(t)) / perDegree,
    lon: -97,
    seconds: t,
    time: new Date(t * 1000).toISOString(),
    segment: 1,
    ...(speed ? { speed: speed(t) } : {}),
  }));
}
const braked = (t: number): number =>
  t < 60 ? 20 * t : 1200 + 20 * Math.min(t - 60, 5) - 2 * Math.min(t - 60, 5) ** 2;
const brakedSpeed = (t: number): number => (t < 60 ? 20 : Math.max(0, 20 - 4 * (t - 60)));

describe('distance on WGS 84', () => {
  // The lengths of the quarter meridian and of the equator, as geodesy tables give them (from memory).
  test('a quarter of a meridian', () => {
    let sum = 0;
    for (let i = 0; i < 9000; i++)
      sum += metersBetween({ lat: i / 100, lon: 5 }, { lat: (i + 1) / 100, lon: 5 });
    expect(sum).toBeCloseTo(10_001_965.729, 1);
  });
  test('round the equator, over the date line too', () => {
    let sum = 0;
    for (let i = 0; i < 36_000; i++) {
      const lon = (x: number): number => ((x / 100 + 180) % 360) - 180;
      sum += metersBetween({ lat: 0, lon: lon(i) }, { lat: 0, lon: lon(i + 1) });
    }
    expect(sum).toBeCloseTo(40_075_016.686, 1);
  });
});

describe('a drive', () => {
  test("with the receiver's own speed", () => {
    const d = measureDrive(drive(braked, 70, () => 0, brakedSpeed));
    expect(Math.abs(d.meters - 1250)).toBeLessThan(d.metersDoubt);
    expect(d.seconds).toBe(70);
    expect(d.top!.value).toBeCloseTo(20, 6);
    expect(Math.abs(d.braking!.value - 4)).toBeLessThan(d.braking!.doubt);
  });
  test('from positions alone, with the wander of a receiver, the truth lies within the plus-or-minus', () => {
    // Half a meter of wander, slow and fast, made by a fixed formula so that the answer is the same each time.
    const wander = (t: number): number => 0.35 * Math.sin(t * 0.7) + 0.2 * Math.sin(t * 2.9 + 1);
    const d = measureDrive(drive(braked, 70, wander));
    expect(Math.abs(d.meters - 1250)).toBeLessThan(d.metersDoubt);
    expect(Math.abs(d.top!.value - 20)).toBeLessThan(d.top!.doubt);
    expect(d.braking!.value).toBeLessThanOrEqual(4 + d.braking!.doubt);
    expect(d.braking!.value).toBeGreaterThan(2.5);
  });
  test('a jump of the receiver is no distance and no speed', () => {
    const fixes = drive((t) => 15 * t, 40);
    fixes[20] = { ...fixes[20]!, lon: -96 };
    const d = measureDrive(fixes);
    expect(d.meters).toBeLessThan(610);
    expect(d.top!.value).toBeLessThan(60);
    expect(d.notes.distance).toContain('2 jumps');
  });
  test('standing still adds doubt, not certainty', () => {
    const d = measureDrive(
      drive(
        () => 0,
        600,
        (t) => 0.2 * Math.sin(t),
      ),
    );
    expect(d.metersDoubt).toBeGreaterThanOrEqual(d.meters);
  });
});
