// Why: a walk the hearing was never fitted to phrase by phrase: a dozen facts that must be there and failures that nobody spoke of.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hear } from '../../src/said/hear/hear.ts';
import type { HeardObservation } from '../../src/said/hear/heard.ts';
import { readTranscript } from '../../src/said/transcript/read-transcript.ts';

const heardOf = (path: string): HeardObservation[] => {
  const file = new URL(`../../demo/walks/${path}/walk.vtt`, import.meta.url);
  const { observations } = hear(readTranscript('walk.vtt', readFileSync(file, 'utf8')).cues);
  const gone = new Set(observations.flatMap((o) => o.corrects ?? []));
  return observations.filter((o, i) => !gone.has(i) && !o.retracted);
};
const plain = (o: HeardObservation): string => {
  const v = o.value;
  const value =
    v.is === 'quantity'
      ? `${Math.round(v.value * 1000) / 1000} ${v.unit}`
      : v.is === 'text'
        ? v.text
        : v.is === 'state'
          ? v.state
          : v.is === 'count'
            ? `${v.count}`
            : 'unknown';
  return `${o.part}${o.place === undefined ? '' : `@${o.place}`} ${o.aspect} ${value} ${o.polarity}${o.hedged ? ' hedged' : ''}`;
};

const tern = heardOf('hollowell-tern-38');
const lines = tern.map(plain);

describe('the demo walk of the diesel', () => {
  test.each([
    // the air-brake check
    'air_gauges buildup_s 38 s neutral',
    'air_gauges cut_out 125 [psi] neutral',
    'air_gauges static_loss 1.5 [psi]/min neutral',
    'air_gauges applied_loss 2.5 [psi]/min neutral',
    'air_gauges alarm_at 62 [psi] neutral',
    // years are years
    'coach year 2006 neutral',
    'chassis_label chassis_year 2005 neutral',
    'co_alarm replace_by 2019 neutral',
    'lp_alarm date 2016 neutral',
    'lp_alarm operates works good',
    // said in parts of one
    'lp_tank gauge 50 % neutral',
    'brake_drum_rotor@front lining 0.375 [in_i] neutral hedged',
    // each at its own place
    'headlamps@left faded faded bad',
    'roof_sealant@rear measured_share 19 % neutral',
    'roof_sealant@front measured_share 11 % neutral',
    'window_awnings@rear damage torn bad',
    'window_awnings@rear tears 10 [in_i] neutral hedged',
    'dump_valves leak leaking bad',
    'ac_run@front return_F 76 [degF] neutral',
    'ac_run@front supply_F 56 [degF] neutral',
    'ac_run@rear return_F 75 [degF] neutral',
    'ac_run@rear supply_F 64 [degF] neutral',
    'slide@curb-front extend_s 22 s neutral',
    'slide@curb-front retract_s 24 s neutral',
    'slide retract_s 51 s neutral',
    'outlets_gfci@bath operates works good',
    // what is not known
    'roof_membrane@rear condition unknown neutral',
    'brake_drum_rotor@rear condition unknown neutral',
    'refrigerator mode_LP unknown neutral',
    'macerator operates unknown neutral',
    // "nothing flaking" denies the flakes, not the rust
    'frame_rails rust rusted bad',
    'frame_rails flaking no good',
    'frame_rails crack no good',
    // one kind, in whatever words
    'floor_main type tile and carpet neutral',
    'roof_membrane type fiberglass neutral',
    'roof_membrane construction one piece neutral',
    // corrected
    'tire@right-front tread_mid 9 [in_i]/32 neutral',
    'solar_array watts 240 W neutral',
    // on the road and on the scale
    'road_test_drive pulling pulling bad hedged',
    'road_test_drive vibration_mph 62 [mi_i]/h neutral hedged',
    'scale_weight total 28140 [lb_av] neutral',
    'scale_weight@rear rear 18340 [lb_av] neutral',
  ])('%s', (line) => {
    expect(lines).toContain(line);
  });

  test.each<[string, (o: HeardObservation) => boolean]>([
    [
      'the coach read as miles',
      (o) => o.part === 'odometer' && o.value.is === 'quantity' && o.value.value < 60_000,
    ],
    ['wheel brakes that fail', (o) => o.part === 'brake_drum_rotor' && o.polarity === 'bad'],
    ['steering that fails', (o) => /steering/.test(o.part) && o.polarity === 'bad'],
    ['an LP leak', (o) => /^lp_(?:tank|system|regulator)$/.test(o.part) && o.polarity === 'bad'],
    ['a tire that pulls or shakes', (o) => o.part === 'tire' && o.aspect === 'operates'],
    [
      'power of 62',
      (o) => o.part === 'engine' && o.aspect === 'power' && o.value.is === 'quantity' && o.value.value < 100,
    ],
    [
      'displacement of 2.5',
      (o) =>
        o.part === 'engine' && o.aspect === 'displacement' && o.value.is === 'quantity' && o.value.value < 8,
    ],
    ['the turbo of another coach', (o) => /turbo|ninety thousand/.test(o.words)],
    [
      'eight thirty-seconds, taken back',
      (o) =>
        o.place === 'right-front' &&
        o.aspect === 'tread_mid' &&
        o.value.is === 'quantity' &&
        o.value.value === 8,
    ],
    [
      '160 watts, taken back',
      (o) => o.part === 'solar_array' && o.value.is === 'quantity' && o.value.value === 160,
    ],
    [
      'the year to replace as a date made',
      (o) => o.aspect === 'date' && o.value.is === 'text' && o.value.text === '2019',
    ],
    ['a frame without rust', (o) => o.part === 'frame_rails' && o.aspect === 'rust' && o.sense === 'absent'],
    ['a friend for a maker', (o) => o.aspect === 'maker' && o.value.is === 'text' && o.value.text === 'Dana'],
    [
      'a roof of two kinds',
      (o) =>
        o.part === 'roof_membrane' &&
        o.aspect === 'type' &&
        o.value.is === 'text' &&
        o.value.text !== 'fiberglass',
    ],
    ['chips that are low', (o) => o.part === 'front_cap' && o.aspect === 'level'],
  ])('not: %s', (_, wrong) => {
    expect(tern.filter(wrong).map(plain)).toEqual([]);
  });

  test('an alarm is never said to be bad for chirping when its button is pressed', () => {
    expect(tern.filter((o) => o.part === 'lp_alarm' && o.polarity === 'bad').map(plain)).toEqual([]);
  });
});

describe('the other demo walks', () => {
  test('the gauge that says a quarter, the years and the corners of the class C', () => {
    const dunlin = heardOf('pennick-dunlin-24').map(plain);
    expect(dunlin).toContain('co_alarm replace_by 2028 neutral');
    expect(dunlin).toContain('lp_tank gauge 25 % neutral hedged');
    expect(dunlin).toContain('generator hours 312 h neutral');
  });
  test('nothing of the trailer can stop it', () => {
    const hurts = heardOf('corley-wren-19').filter(
      (o) => o.polarity === 'bad' && /brake|lp_|tire|steer|alarm/.test(o.part),
    );
    expect(hurts.map(plain)).toEqual([]);
  });
});
