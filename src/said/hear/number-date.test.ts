// Why: what is a date and what is a count hangs on small words; the wrong one makes a false age of an alarm.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const dates = (text: string): string[] =>
  hear([{ start: 0, end: 20, text }])
    .observations.filter((o) => o.sense === 'identity')
    .map((o) => `${o.part} ${o.aspect} ${o.value.is === 'text' ? o.value.text : ''}`);

describe('dates of things', () => {
  test('month and year', () => {
    expect(dates('LP tank, date on the collar is oh three of eighteen.')).toEqual(['lp_tank date 03/18']);
    expect(dates('House batteries are stamped June of twenty-two.')).toEqual(['house_battery date 06/22']);
    expect(dates('The fire extinguisher tag says June twenty twenty-three.')).toEqual([
      'extinguisher date 06/2023',
    ]);
  });
  test('years, whole and short', () => {
    expect(dates("The smoke alarm's made in 2013.")).toEqual(['smoke_alarm date 2013']);
    expect(dates("Chassis battery's dated fourteen.")).toEqual(['chassis_battery date 2014']);
    expect(dates('The smoke alarm is from twenty oh nine.')).toEqual(['smoke_alarm date 2009']);
  });
  test('limits', () => {
    expect(dates('The gas detector is good till twenty-six.')).toEqual(['lp_alarm replace_by 2026']);
    expect(dates('CO alarm says replace by May twenty twenty-five.')).toEqual([
      'co_alarm replace_by 05/2025',
    ]);
  });
  test('two alarms named together share the date', () => {
    expect(
      dates('Both the smoke alarm and the propane alarm are there. They were made in 2014.').sort(),
    ).toEqual(['lp_alarm date 2014', 'smoke_alarm date 2014']);
  });
  test('counts and temperatures are no dates', () => {
    expect(dates('The fridge is sitting at thirty-six and the smoke alarm is loud.')).toEqual([]);
  });
});
