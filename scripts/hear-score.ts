// Why: `npm run hear-score` shows how well talk is heard, per walk and per kind, and on --verbose every fact missed and every false one (not of the walks that are only scored).
import { pathToFileURL } from 'node:url';
import { measureWalk, sealedWalks, walkNames, withoutStops } from '../test/walks/walk-score.ts';

const args = process.argv.slice(2);
const verbose = args.includes('--verbose');
const bare = args.includes('--without-stops');
const at = args.indexOf('--in');
const dir = at >= 0 ? pathToFileURL(`${args[at + 1]}/`) : undefined;
const asked = args.filter((a, i) => !a.startsWith('--') && args[i - 1] !== '--in');
const walks = asked.length > 0 ? asked : walkNames(dir);

const pct = (n: number): string => (100 * n).toFixed(1).padStart(6);
const sum = {
  gold: 0,
  hit: 0,
  must: 0,
  walks: 0,
  precision: 0,
  place: 0,
  fixed: 0,
  toFix: 0,
  wrong: 0,
  taken: 0,
  negation: 0,
};
const kinds: Record<string, { gold: number; hit: number }> = {};
console.log('walk    facts recall   must   prec. places hedges corrections distractors negation praise');
for (const walk of walks) {
  const { S, missed, bad } = measureWalk(walk, bare ? withoutStops : undefined, dir);
  console.log(
    [
      walk.padEnd(6),
      String(S.gold).padStart(5),
      pct(S.recall),
      pct(S.recall_must),
      pct(S.precision),
      pct(S.position_accuracy),
      pct(S.hedged_accuracy),
      `${S.corrections.final_found}/${S.corrections.final_gold} (${S.corrections.wrong_value_extracted} wrong)`.padStart(
        13,
      ),
      String(S.false_distractor).padStart(8),
      String(S.negation_errors).padStart(9),
      `${(100 * S.praise.recall).toFixed(0)} (${S.praise.taken_as_fact} taken)`.padStart(12),
    ].join(' '),
  );
  sum.walks++;
  sum.gold += S.gold;
  sum.hit += S.matched;
  sum.must += S.recall_must;
  sum.precision += S.precision;
  sum.place += S.position_accuracy;
  sum.fixed += S.corrections.final_found;
  sum.toFix += S.corrections.final_gold;
  sum.wrong += S.corrections.wrong_value_extracted;
  sum.taken += S.false_distractor;
  sum.negation += S.negation_errors;
  for (const [kind, k] of Object.entries(S.by_kind)) {
    const total = kinds[kind] ?? { gold: 0, hit: 0 };
    kinds[kind] = { gold: total.gold + k.gold, hit: total.hit + k.hit };
  }
  if (!verbose || (!dir && sealedWalks.has(walk))) continue;
  for (const g of missed)
    console.log(
      `  missed${g.must ? ' MUST' : ''} ${g.id} ${g.t} ${g.kind} ${g.component}/${g.attribute ?? ''} ${g.value ?? ''} ${g.unit ?? ''} ${g.position ?? ''} "${g.quote}"`,
    );
  for (const [o, why] of bad)
    console.log(
      `  false ${o.at} ${o.kind} ${o.part}/${o.aspect} ${o.value ?? ''} ${o.unit ?? ''} "${o.quote}" <- ${why}`,
    );
}
const n = Math.max(1, sum.walks);
console.log(
  `all    ${String(sum.gold).padStart(5)} ${pct(sum.hit / Math.max(1, sum.gold))} ${pct(sum.must / n)} ${pct(sum.precision / n)} ${pct(sum.place / n)}  (recall over facts, the rest the mean of the walks); corrections ${sum.fixed}/${sum.toFix}, ${sum.wrong} wrong values, ${sum.taken} distractors, ${sum.negation} denials lost`,
);
for (const [kind, k] of Object.entries(kinds))
  console.log(`  ${kind.padEnd(10)} ${pct(k.hit / k.gold)} of ${k.gold}`);
