// Why: how long an alarm or an extinguisher is to be trusted, counted from the date on its back.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Citation, Source } from '../standard.ts';
import { practiceLimit } from '../trade-practice/practice.ts';

const readOn = day('2026-11-24');

export const nfpa72: Source = {
  id: 'nfpa-72',
  title: 'NFPA 72, National Fire Alarm and Signaling Code',
  publisher: 'National Fire Protection Association',
  edition: 'as quoted by a camp association',
  standing: 'standard',
  address: 'https://www.camporca.org',
  scope: 'Known from a page that quotes it; the standard itself was not read.',
};
export const nfpa10: Source = {
  id: 'nfpa-10',
  title: 'NFPA 10, Standard for Portable Fire Extinguishers',
  publisher: 'National Fire Protection Association',
  edition: 'as quoted by service companies',
  standing: 'standard',
  address: 'http://www.alltronsystems.com/6-year-maintenance/',
  scope: 'Known from pages that quote it; the standard itself was not read.',
};
export const nfpa1192: Source = {
  id: 'nfpa-1192',
  title: 'NFPA 1192, Standard on Recreational Vehicles',
  publisher: 'National Fire Protection Association',
  edition: 'from memory',
  standing: 'standard',
  address: 'https://www.nfpa.org',
  scope:
    'From memory: the standard itself was not read. It binds those who build; a used coach is held to it by custom.',
};
export const alarmLifeNotes: Source = {
  id: 'alarm-life-notes',
  title: 'Service columns of RV magazines on alarm lives',
  publisher: 'RV magazines (names withheld)',
  edition: '2022',
  standing: 'trade practice',
  scope: 'Secondary pages. The date and life printed on the case win.',
};

/** A citation of NFPA 1192, which was not read. */
export const rvStandard = (says: string): Citation => ({
  source: nfpa1192,
  clause: 'not known',
  says,
  read: 'from memory',
});

export const smokeAlarmLife = limitOf(
  'smoke-alarm-life',
  'age of a smoke alarm from its date of manufacture',
  'a',
  readOn,
  10,
  {
    source: nfpa72,
    clause: 'as quoted',
    says: 'a smoke alarm is replaced 10 years after its date of manufacture',
    read: readOn,
  },
);

export const coAlarmLife = limitOf(
  'co-alarm-life',
  'age of a carbon monoxide alarm from its date of manufacture',
  'a',
  readOn,
  7,
  {
    source: alarmLifeNotes,
    clause: 'as quoted',
    says: 'alarms made now last 7 to 10 years by the case, older ones 5',
    read: readOn,
  },
);

export const coAlarmLifeOld = limitOf(
  'co-alarm-life-old',
  'age at which an older carbon monoxide alarm is spent',
  'a',
  readOn,
  5,
  {
    source: alarmLifeNotes,
    clause: 'as quoted',
    says: 'older carbon monoxide alarms last 5 years',
    read: readOn,
  },
);

export const lpAlarmLife = limitOf(
  'lp-alarm-life',
  'age of an LP gas alarm from its date of manufacture',
  'a',
  readOn,
  5,
  {
    source: alarmLifeNotes,
    clause: 'as quoted',
    says: 'an LP gas alarm lasts 5 years, some 7: the case says',
    read: readOn,
  },
);

export const lpAlarmLifeLongest = limitOf(
  'lp-alarm-life-longest',
  'age at which any LP gas alarm is spent',
  'a',
  readOn,
  7,
  {
    source: alarmLifeNotes,
    clause: 'as quoted',
    says: 'the longest-lived LP gas alarms last 7 years',
    read: readOn,
  },
);

export const extinguisherLife = limitOf(
  'extinguisher-life',
  'age of a throw-away dry chemical extinguisher',
  'a',
  readOn,
  12,
  {
    source: nfpa10,
    clause: 'as quoted',
    says: 'one that cannot be recharged goes out of service 12 years after manufacture',
    read: readOn,
  },
);

export const extinguisherInternal = limitOf(
  'extinguisher-internal',
  'age at which a rechargeable extinguisher is opened and looked into',
  'a',
  readOn,
  6,
  {
    source: nfpa10,
    clause: 'as quoted',
    says: 'a stored-pressure extinguisher is examined inside every 6 years',
    read: readOn,
  },
);

export const smokeAlarmWatch = practiceLimit(
  'smoke-alarm-watch',
  'age of a smoke alarm, watch',
  'a',
  8,
  'two years before its end a smoke alarm is changed with the next service',
);
