// Why: how far a denial reaches is measured on sentences that others annotated, beside the figures published with the method.
// W. W. Chapman, W. Bridewell, P. Hanbury, G. F. Cooper, B. G. Buchanan, A simple algorithm for identifying negated findings
// and diseases in discharge summaries, Journal of Biomedical Informatics 34 (2001) 301-310: sensitivity 77.8 %, specificity 94.5 %.
// The sentences are not part of this repository: they are given by the environment variable NEGATION_SENTENCES, a file of
// tab-separated concept, sentence and "Affirmed" or "Negated" (the open data set of chapmanbe/negex, Apache-2.0, in that form).
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Denials, deniedIn } from '../../../src/said/hear/denial.ts';
import { markWords } from '../../../src/said/hear/marks.ts';
import { phraseList } from '../../../src/said/hear/phrase-index.ts';
import { denyBefore } from '../../../src/said/hear/trigger-words.ts';
import { normsOf, wordsOf } from '../../../src/said/hear/word.ts';

const list = (text: string) => phraseList(text.split(',').map((p) => p.trim()));
/** Plain English of people who write up what they found; the algorithm is that of the walks. */
const written: Denials = {
  before: list(
    'no, not, without, denies, denied, denying, deny, never, none, negative for, absence of, absent, free of, no evidence of, no sign of, no signs of, no new, ' +
      'fails to reveal, failed to reveal, declines, declined, rules out, ruled out, rule out, cannot, nor, neither, lack of, lacks, no longer, unable to, did not, does not, was not, were not, is not, are not, ' +
      "didn't, doesn't, isn't, wasn't, no other, no further, resolved without, rather than, free from, no significant, nothing",
  ),
  after: list(
    'was ruled out, is ruled out, were ruled out, ruled out, not seen, not present, is absent, was absent, are absent, was negative, is negative, were negative, negative, unlikely, not demonstrated, not appreciated, none',
  ),
  pseudo: list(
    'no increase, no change, no significant change, no interval change, not only, not certain, not necessarily, without difficulty, gram negative, no significant interval change, not drain, not cause, no suspicious change, not extend, not further',
  ),
  ends: list(
    'but, however, except, although, though, aside from, apart from, secondary to, yet, still, which, who, because, since, as the cause of, as a cause of, due to, cause of, causes of, source of, reason for, etiology of, other than, presented, she did, he did, with',
  ),
  reach: 14,
  lists: true,
};

/** Whether a concept is denied in a sentence; undefined where its words do not stand there in that order. */
function isDenied(concept: string, sentence: string, by: Denials): boolean | undefined {
  const all = wordsOf([{ start: 0, end: 10, text: sentence.toLowerCase() }]);
  const marks = markWords(all.words);
  const denied = deniedIn(marks, by);
  const norms = normsOf(concept.toLowerCase());
  if (norms.length === 0) return undefined;
  for (let i = 0; i < marks.words.length; i++) {
    if (!norms.every((n, k) => marks.words[i + k]?.norm === n)) continue;
    const inside = norms.some((_, k) => by.before.at(marks.words, i + k) !== undefined);
    return inside || denied[i] === 1 || denied[i + norms.length - 1] === 1;
  }
  return undefined;
}

describe('the reach of a denial', () => {
  test.each([
    ['crack', 'There is no crack in the frame', true],
    ['rust', 'No leaks, cracks or rust', true],
    ['crack', 'It has no rust but there is a crack', false],
    ['crack', 'The crack was ruled out', true],
    ['crack', 'There is a crack', false],
    ['crack', 'No change in the crack', false],
  ])('%s: %s', (concept, sentence, denied) => {
    expect(isDenied(concept, sentence, written)).toBe(denied);
  });
  test('the triggers of the trade deny in the same way', () => {
    expect(denyBefore.at(wordsOf([{ start: 0, end: 1, text: 'no sign of a leak' }]).words, 0)?.length).toBe(
      3,
    );
  });

  const file = process.env.NEGATION_SENTENCES ?? '';
  // Registered only where somebody gives the file: CONTRIBUTING.md says how. The cases above always run.
  if (file !== '') {
    test('is at least as good as was published with the method', () => {
      const rows = readFileSync(file, 'utf8')
        .trim()
        .split('\n')
        .slice(1)
        .map((r) => r.split('\t'));
      const count = { hit: 0, missed: 0, right: 0, wrong: 0, unread: 0 };
      for (const [concept = '', sentence = '', truth] of rows) {
        const said = isDenied(concept, sentence, written);
        if (said === undefined) count.unread++;
        else if (truth === 'Negated') count[said ? 'hit' : 'missed']++;
        else count[said ? 'wrong' : 'right']++;
      }
      const sensitivity = count.hit / (count.hit + count.missed);
      const specificity = count.right / (count.right + count.wrong);
      console.log(
        `sensitivity ${sensitivity.toFixed(3)} (published 0.778), specificity ${specificity.toFixed(3)} (published 0.945)`,
        count,
      );
      expect(count.unread).toBeLessThan(rows.length / 50);
      expect(sensitivity).toBeGreaterThanOrEqual(0.778);
      expect(specificity).toBeGreaterThanOrEqual(0.945);
    });
  }
});
