// Why: an air-brake check spread over short clauses is read as one run, and what is taken back falls.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const heard = (text: string) => hear([{ start: 0, end: 30, text }]).observations;
const readings = (text: string): string[] =>
  heard(text).flatMap((o) =>
    o.value.is === 'quantity' && !o.retracted
      ? [`${o.part} ${o.aspect} ${o.value.value} ${o.value.unit}`]
      : [],
  );

describe('a run of air', () => {
  test('from what to what in how long', () => {
    expect(readings('Air. Build ninety to one hundred, twenty-two seconds.')).toEqual([
      'air_gauges primary 90 [psi]',
      'air_gauges buildup_s 22 s',
    ]);
  });
  test('start, end and loss of a static and an applied test', () => {
    expect(
      readings(
        'Air brake test. Static, two minutes, one eighteen down to one sixteen, so two pounds lost. Now applied, one minute, from one fifteen to, say, one twelve, so three pounds.',
      ),
    ).toEqual([
      'air_gauges test_time 2 min',
      'air_gauges primary 118 [psi]',
      'air_gauges primary 116 [psi]',
      'air_gauges static_loss 1 [psi]/min',
      'air_gauges test_time 1 min',
      'air_gauges primary 115 [psi]',
      'air_gauges primary 112 [psi]',
      'air_gauges applied_loss 3 [psi]/min',
    ]);
  });
  test('a run done again replaces the one before', () => {
    const all = readings(
      'Air brake check. Eighty-five to a hundred, forty-one seconds. No, I started late. Again, eighty-five to a hundred, thirty-six seconds.',
    );
    expect(all).toContain('air_gauges buildup_s 36 s');
    expect(all).not.toContain('air_gauges buildup_s 41 s');
    expect(all).not.toContain('air_gauges buildup_s 85 s');
  });
  test('the governor by one word, needles that agree', () => {
    const all = readings(
      'Air brakes. Governor out at one thirty. The two needles agree within three pounds.',
    );
    expect(all).toContain('air_gauges cut_out 130 [psi]');
    expect(all).toContain('air_gauges measured_pressure 3 [psi]');
  });
  test('strokes are of the chambers, and a one after a side begins a number', () => {
    expect(
      readings(
        'Brakes. Stroke, steer left one and three eighths. Steer right one and a half. Drive right one seven.',
      ),
    ).toEqual([
      'brake_chambers stroke 1.375 [in_i]',
      'brake_chambers stroke 1.5 [in_i]',
      'brake_chambers stroke 1.7 [in_i]',
    ]);
  });
});
