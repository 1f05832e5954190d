// Why: what counts as work, good order and work done is said in a hundred ways; each family is held by sentences of its own.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';
import { hearJson } from './hear-json.ts';
import { formsOf } from './verb-forms.ts';

const heard = (text: string) =>
  hearJson(hear([{ start: 0, end: 9, text }])).map((r) => `${r.part} ${r.kind} ${r.polarity}`);

describe('verbs of work', () => {
  test('persons and tenses are made from the lemma', () => {
    const words = (verb: string) => formsOf(verb).map(([word]) => word);
    expect(words('trip')).toEqual(['trip', 'trips', 'tripped', 'tripping']);
    expect(words('open')).toEqual(['open', 'opens', 'opened', 'opening']);
    expect(words('blow')).toEqual(['blow', 'blows', 'blew', 'blown', 'blowing']);
    expect(words('cycle')).toEqual(['cycle', 'cycles', 'cycled', 'cycling']);
  });
  test.each([
    ['The generator fired right up.', 'generator'],
    ['The awning went out and came back in.', 'patio_awning'],
    ['The furnace kicked on and it blew hot.', 'furnace_run'],
    ['The smoke alarm hollered when I tried it.', 'smoke_alarm'],
    ['The outlet by the bed trips and resets.', 'outlets_gfci'],
    ['Entry step comes out, tucks back in.', 'entry_step'],
    ['The toilet flushes like it should.', 'toilet'],
    ['All the bay doors on that side open and latch.', 'compartment_doors'],
  ])('%s', (text, part) => expect(heard(text)).toContain(`${part} operates good`));
  test('a verb names its part where none is named', () => {
    expect(heard('Shifts fine.')).toContain('transmission operates good');
    expect(heard('Starts right up.')).toContain('engine operates good');
  });
  test.each([
    'I opened the door for the dog.',
    'If the furnace runs you will hear it.',
    'Can the awning open?',
    'In the photo the windows are seen with the doors shut.',
    'The generator runs about ninety dollars a month.',
    'The entry step does not come out.',
    'The slide goes out slowly.',
  ])('no work: %s', (text) => expect(heard(text).filter((r) => / operates good/.test(r))).toEqual([]));
});

describe('good order and work done', () => {
  test.each([
    ['The coolant is between the marks.', 'coolant condition good'],
    ['Headlights, markers, horn, good.', 'headlamps operates good'],
    ['The dash air is cold.', 'dash_ac operates good'],
    ['Somebody already resealed the skylight.', 'skylight condition neutral'],
    ['The house batteries went in two summers ago.', 'house_battery condition neutral'],
    ["We'll replace that windshield.", 'windshield condition neutral'],
    ['She was always kept in a barn.', 'storage_history condition neutral'],
    ["The bank's still got the title.", 'title_doc condition neutral'],
  ])('%s', (text, row) => expect(heard(text)).toContain(row));
  test.each(['You should replace the windshield.', 'The windshield has not been replaced.'])(
    'no work done: %s',
    (text) => expect(heard(text).filter((r) => / condition neutral/.test(r))).toEqual([]),
  );
});
