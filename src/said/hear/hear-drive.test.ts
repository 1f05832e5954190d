// Why: at the wheel a bare number is a speed, a grade or a gear, and each belongs to its own part.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const read = (text: string): string[] =>
  hear([{ start: 0, end: 30, text }])
    .observations.filter((o) => o.sense === 'quantity' && !o.retracted)
    .map((o) => {
      const v = o.value;
      return `${o.part}/${o.aspect} ${v.is === 'quantity' ? v.value : v.is === 'count' ? v.count : ''}`;
    });

describe('on the road', () => {
  test('speeds, grades and gears', () => {
    expect(read('On the road test. Fifty-five on the flat.')).toEqual(['road_test_drive/speed 55']);
    expect(read('Drove it out of town. The hill is a seven percent grade. She dropped to third.')).toEqual([
      'road_test_drive/grade_tried 7',
      'transmission/gears 3',
    ]);
    expect(read('We are rolling. First stop, from thirty-five.')).toEqual([
      'brake_drum_rotor/measured_speed 35',
    ]);
  });
  test('a speedometer against a satellite', () => {
    expect(read('On the highway. The GPS says fifty-two.')).toEqual(['dash_gauges/measured_speed 52']);
  });
  test('at what speed it shakes', () => {
    expect(read('Test drive. There is a buzz in the seat between fifty and fifty-five.')).toContain(
      'road_test_drive/vibration_mph 50',
    );
  });
  test('what is said far from any road is no speed', () => {
    expect(read('The awning is fifty on the flat.').filter((x) => x.startsWith('road'))).toEqual([]);
  });
});

describe('air brakes', () => {
  test('build-up, loss and what it took', () => {
    expect(read('Air brake test. It took five minutes to make ninety pounds.')).toEqual([
      'air_gauges/test_time 5',
      'air_gauges/primary 90',
    ]);
    expect(
      read('Air brake test. Brakes released, loses two pounds in a minute. On the pedal it is three.'),
    ).toEqual(['air_gauges/static_loss 2', 'air_gauges/test_time 1', 'air_gauges/applied_loss 3']);
    expect(read("Air's gone from one fifteen to one ten in the last thirty minutes.")).toEqual([
      'air_gauges/primary 115',
      'air_gauges/primary 110',
      'air_gauges/test_time 30',
    ]);
  });
  test('the parking button', () => {
    expect(read('Air brake test. The button popped out at twenty-eight.')).toEqual([
      'parking_brake/pops_at 28',
    ]);
  });
});
