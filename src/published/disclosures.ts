// Why: every fault is told to the buyer once: what it is, how big, what it costs; what was done about them stands once over each group.
import type { Job } from '../planned/job.ts';
import { dollars, showMoney } from '../units/money.ts';
import { basisOf, weakest } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { byWorst, isFault } from './fault.ts';
import {
  groupTitle,
  groupWords,
  isSight,
  limitsOf,
  readingsOf,
  reasonOf,
  type Together,
  together,
} from './fault-groups.ts';
import { evidenceOf } from './line-claims.ts';
import { plainDay } from './plain-day.ts';
import { lowered } from './plain-subject.ts';

/** A text as a sentence: one full stop at its end, whatever the rule's author wrote. */
const stopped = (text: string): string => (/[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`);

/** How big: the readings, then against whose limit. Empty where the reason has said it all. */
function howBig(group: Together): string {
  const readings = readingsOf(group);
  if (readings === '') return '';
  const limits = limitsOf(group);
  return limits === '' ? ` Noted: ${readings}.` : ` Read: ${readings}, ${limits}.`;
}

/** The estimates of jobs, rounded outward to ten dollars. Nothing where one has no estimate; a job told before is not told again. */
function whatItCosts(jobs: readonly Job[], told: Set<string>): string {
  const costs = jobs.flatMap((j) => (j.cost === undefined ? [] : [j.cost]));
  if (costs.length === 0 || costs.length < jobs.length) return '';
  if (jobs.every((j) => told.has(j.id))) return ' In an estimate above.';
  for (const j of jobs) told.add(j.id);
  const [low, high] = costs.reduce<readonly [number, number]>(
    (sum, [l, h]) => [sum[0] + l, sum[1] + h],
    [0, 0],
  );
  const tens = (n: number): string => showMoney(dollars(n));
  const [from, to] = [Math.floor(low / 1000) * 10, Math.ceil(high / 1000) * 10];
  return ` Estimate: ${from === to ? tens(from) : `${tens(from)} to ${tens(to)}`}.`;
}

/** The rule's own words behind the subject; of several places "it" is each. */
function reasonWords(group: Together): string {
  const words = lowered(reasonOf(group[0]));
  return stopped(group.length > 1 ? words.replace(/^it (?=[a-z])/, 'each ') : words);
}

/** House default, no source: words longer than this are a story, not a finding; they stand in the report. */
const longestQuote = 80;

/**
 * The walker's own words behind a sight of one place: a state is one word of a list and says less, sometimes other, than what was said. Words of
 * praise, or of danger or its absence, are not quoted to a buyer.
 */
function quote(group: Together): string {
  const [only, ...others] = group;
  const source = only.fact?.evidence.find((o) => o.source.from === 'speech')?.source;
  if (others.length > 0 || source?.from !== 'speech') return '';
  const words = source.words.replace(/\s+/g, ' ').trim().replace(/[,;]$/, '');
  const isFit = words.split(' ').length > 2 && words.length <= longestQuote;
  return isFit && !/\b(un)?safe|\bdot\b|love|great|beautiful|gorgeous|perfect/i.test(words)
    ? ` “${words}”`
    : '';
}

function disclosure(group: Together, jobs: readonly Job[], told: Set<string>): Claim {
  const [first] = group;
  const facts = group.flatMap((f) => (f.fact === undefined ? [] : [f.fact]));
  const body = isSight(first)
    ? `${stopped(groupWords(group))}${quote(group)}`
    : `${reasonWords(group)}${howBig(group)}`;
  return {
    id: `disclosure/${first.id}`,
    text: `${groupTitle(group, true)}: ${body}${whatItCosts(jobs, told)}`,
    section: 'disclosure',
    standing: 'backed',
    basis: facts.length === 0 ? 'none' : weakest(facts.map(basisOf)),
    evidence: evidenceOf(facts),
    facts,
    figures: [...new Set(facts.flatMap((f) => (f.figure === undefined ? [] : [f.figure])))],
    findings: group.map((f) => f.id),
    published: true,
  };
}

/** Whether this sentence opens a group of faults rather than telling one. */
export const opensGroup = (c: Pick<Claim, 'id'>): boolean => c.id.startsWith('disclosure/group/');

const openings = {
  stop: (day: string) =>
    `Stop. None of these had been put right or settled as of ${day}; until they are, this is offered only as not fit to drive or use.`,
  advised: (day: string) =>
    `Our shop advises to repair these before sale. None had been repaired or measured again as of ${day}.`,
  other: (day: string) => `Other faults and wear. None had been repaired or measured again as of ${day}.`,
} as const;

/** What stands over a group: what was done about all of it, and on which day. */
function opening(which: keyof typeof openings, claims: readonly Claim[], on: Unpublished['on']): Claim {
  const facts = claims.flatMap((c) => c.facts);
  return {
    id: `disclosure/group/${which}`,
    text: openings[which](plainDay(on)),
    section: 'disclosure',
    standing: 'backed',
    basis: 'none',
    evidence: evidenceOf(facts),
    facts,
    figures: [],
    findings: [],
    published: true,
  };
}

/** Every fault in one disclosure, worst first: those that stop it, those to be repaired before sale, the rest. */
export function disclosures(u: Unpublished): readonly Claim[] {
  const told = new Set<string>();
  const jobsOf = (group: Together): readonly Job[] =>
    u.jobs.filter((j) => j.findings.some((id) => group.some((f) => f.id === id)));
  const groups = together(u.findings.filter(isFault).toSorted(byWorst)).map((group) => ({
    group,
    jobs: jobsOf(group),
  }));
  const isAdvised = (jobs: readonly Job[]): boolean => jobs.some((j) => j.policy === 'before sale');
  const parts = [
    ['stop', groups.filter(({ group }) => group[0].verdict === 'stop')],
    ['advised', groups.filter(({ group, jobs }) => group[0].verdict !== 'stop' && isAdvised(jobs))],
    ['other', groups.filter(({ group, jobs }) => group[0].verdict !== 'stop' && !isAdvised(jobs))],
  ] as const;
  return parts.flatMap(([which, all]) => {
    if (all.length === 0) return [];
    const claims = all.map(({ group, jobs }) => disclosure(group, jobs, told));
    return [opening(which, claims, u.on), ...claims];
  });
}
