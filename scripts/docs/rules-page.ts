// Why: every check on one page: what is asked, against which number or word, and what was proved of it.
import { partOf } from '../../src/catalogue/index.ts';
import type { Station } from '../../src/catalogue/part.ts';
import type { Proof, Rule, Step } from '../../src/judged/rule.ts';
import { verdictOf } from '../../src/judged/verdict.ts';
import type { Value } from '../../src/said/entry.ts';
import { limitOn } from '../../src/standards/standard.ts';
import { day } from '../../src/units/day.ts';
import { head, measure, page, row } from './page.ts';

/** The day the pages are made for; only the value in force matters. */
const on = day('2026-11-24');

/** Every rule by station, with its limits and its proofs. */
export function rulesPage(
  rules: readonly Rule[],
  stations: readonly Station[],
  cautions: Readonly<Record<string, string>>,
): string {
  const body = stations.flatMap((s) => {
    const here = rules.filter((r) => partOf(r.part)?.station === s.id);
    return here.length === 0 ? [] : [`## ${s.name}`, '', ...here.flatMap(ruleText)];
  });
  const said = [
    '## Cautions',
    '',
    ...Object.entries(cautions).map(([key, words]) => `- **${key}**: ${words}`),
  ];
  return page(
    'Rules',
    `${rules.length} checks. The first limit that is not kept gives the verdict; a reading that is missing, in another unit or nearer a limit than its own plus-or-minus never passes.`,
    [...body, ...said],
  );
}

const ruleText = (rule: Rule): readonly string[] => [
  `### ${rule.id}`,
  '',
  `**${rule.asks}** ${rule.why}`,
  '',
  `${partOf(rule.part)?.name ?? rule.part}, \`${rule.part}/${rule.aspect}\`${rule.also ? `, also as ${rule.also.join(', ')}` : ''}. Look: ${rule.look} (${rule.minutes} min)${rule.caution ? ` Caution: ${rule.caution}.` : ''}`,
  '',
  ...head('unless', 'verdict', 'who says so'),
  ...rule.steps.map((s) => row(...stepCells(s))),
  '',
  `Then: ${rule.next} By: ${rule.who}.`,
  '',
  ...head('given', 'outcome', 'verdict'),
  ...rule.proofs.map((p) => row(givenText(p), p.outcome, p.verdict)),
  '',
];

function stepCells(step: Step): readonly string[] {
  const verdict = verdictOf(step.weight);
  if ('mustBe' in step) {
    return [
      `${step.mustBe}: ${step.words.join(', ')}`,
      verdict,
      step.cites.map((c) => `${c.source.title}, ${c.clause}`).join('; '),
    ];
  }
  if (typeof step.limit === 'function')
    return [`${step.must} what the unit's own plate says`, verdict, "this unit's own plate"];
  const { value, citations } = limitOn(step.limit, on);
  return [
    `${step.must} ${measure(value, step.limit.unit)}`,
    verdict,
    citations.map((c) => `${c.source.title}, ${c.clause} (${c.source.standing})`).join('; '),
  ];
}

const givenText = (proof: Proof): string =>
  `${proof.given ? valueText(proof.given) : 'nobody looked'}${proof.from ? ` (from ${proof.from})` : ''}`;

function valueText(value: Value): string {
  if (value.is === 'quantity')
    return (
      measure(value.value, value.unit) +
      (value.plusOrMinus === undefined ? '' : `, give or take ${value.plusOrMinus}`)
    );
  if (value.is === 'count') return `${value.count}`;
  if (value.is === 'state') return value.state;
  return value.is === 'text' ? `"${value.text}"` : `unknown: ${value.why}`;
}
