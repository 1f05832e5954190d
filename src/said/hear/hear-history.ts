// Why: what was done to a part, what it is since, and what is promised for it: neither good nor bad order, and still worth writing down.
// Trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';
import type { Clause, Draft } from './clause.ts';
import { denialBefore, draftOf, subjectOf, type Verdict } from './state-draft.ts';
import type { Talk } from './talk.ts';
import { formsOf, isSame } from './verb-forms.ts';

const set = (text: string): Set<string> => new Set(text.split(' '));

/** Work that may have been done, by what it leaves. */
const works: readonly (readonly [State, string])[] = [
  [
    'replaced',
    'replace update upgrade swap change recover reupholster install renew redo reskin rehang restitch resew resurface',
  ],
  [
    'repaired',
    'fix repair patch weld reweld glue reglue rebuild recaulk caulk repaint paint refinish rewire replumb mend reinforce refurbish overhaul recondition restore splice fill respray coat recoat glob retape tape caulk smear slap glop goop stitch sew rivet buff polish compound sand touch straighten',
  ],
  [
    'serviced',
    'service reseal grease regrease pack repack retorque torque align balance shampoo detail steam wash vacuum sanitize winterize dewinterize recharge convert tune rotate',
  ],
];
const pasts = new Map<string, State>([
  ['redid', 'replaced'],
  ['redone', 'replaced'],
  ['rebuilt', 'repaired'],
]);
const doing = new Set<string>('putting fitting ordering getting throwing'.split(' '));
const doBase = new Set<string>('order'.split(' '));
for (const [state, verbs] of works)
  for (const verb of verbs.split(' '))
    for (const [word, form] of formsOf(verb)) {
      if (form === 'past' || isSame(verb)) pasts.set(word, state);
      if (form === 'ing') doing.add(word);
      if (form === 'base') doBase.add(word);
    }
for (const word of ['clean', 'snug', 'tighten', 'touch', 'reattach', 'refasten', 'fit']) {
  doBase.add(word);
  for (const [form, as] of formsOf(word)) if (as === 'ing') doing.add(form);
}

const doers = set(
  'i we he she they somebody someone owner shop dealer guy fella wife husband dad father son mechanic who previous factory us',
);
const times = set(
  'ago back last this spring summer fall winter autumn year years month months week weeks recently since yesterday monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december season already new twice once',
);
const passive = set(
  "been be had got gotten was were have has 's 've just already is are 're getting newly recently professionally freshly both all completely",
);
const leads = set('until till when once if before unless after should would could might may to needs need');
const between = set(
  'already just had have has also then even went ahead and finally recently actually since got',
);

/** The index of the first word of the clause from `from` that is one of these, or -1. */
const find = (talk: Talk, from: number, to: number, of: ReadonlySet<string>): number => {
  for (let k = from; k < to; k++) if (of.has(talk.marks.words[k]?.norm ?? '')) return k;
  return -1;
};

/** A time is said near: "last fall", "in twenty-two", "two summers back". */
const isDated = (talk: Talk, clause: Clause, i: number): boolean =>
  find(talk, i, Math.min(clause.to, i + 8), times) >= 0 ||
  clause.numbers.some((n) => n.from >= i && n.from - i <= 5);

/** "Before it is replaced", "should be resealed"; "might have been replaced" was, with a doubt. */
function isOnlyPossible(talk: Talk, clause: Clause, i: number): boolean {
  const at = find(talk, clause.from, i, leads);
  return at >= 0 && !/^(?:have|of|'ve)$/.test(talk.marks.words[at + 1]?.norm ?? '');
}

/** The part that something was done to: the object behind, or the subject before. */
function partDone(talk: Talk, clause: Clause, i: number): string | undefined {
  const after = clause.mentions.find((m) => !m.aside && m.from > i && m.from - i <= 4);
  const before = clause.mentions.some((m) => !m.aside && !m.weak && m.to <= i);
  return (before ? undefined : after?.parts[0]) ?? subjectOf(talk, clause, i);
}

/** Work done or promised, storage and origin, in a clause. */
export function hearHistory(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const norm = (k: number): string => (k < clause.from || k >= clause.to ? '' : (words[k]?.norm ?? ''));
  const put = (
    part: string | undefined,
    state: State,
    at: number,
    length: number,
    more: Partial<Verdict> = {},
  ): boolean => {
    if (!part) return false;
    out.push(
      draftOf(
        talk,
        clause,
        taken,
        { part, aspect: 'condition', state, sense: 'condition', polarity: 'neutral', weight: 0.6, ...more },
        at,
        length,
      ),
    );
    return true;
  };
  const free = (k: number): boolean => !taken[k] && !talk.scopes.elsewhere[k];
  const stored = storedAt(talk, clause);
  if (stored !== undefined && free(stored) && denialBefore(talk, clause, stored) === undefined)
    put('storage_history', 'noted', stored, 1);
  for (let i = clause.from; i < clause.to; i++) {
    if (!free(i) || clause.mentions.some((m) => m.from <= i && i < m.to)) continue;
    const n = norm(i);
    const state = pasts.get(n);
    if (state && denialBefore(talk, clause, i) === undefined && !isOnlyPossible(talk, clause, i)) {
      const poorly =
        /^(?:poorly|badly)$/.test(norm(i + 1)) || (norm(i + 1) === 'not' && norm(i + 2) === 'well');
      const polarity = poorly ? 'bad' : 'neutral';
      let k = i - 1;
      while (k >= clause.from && between.has(norm(k))) k--;
      const named = clause.mentions.find((m) => m.to === i && !m.aside);
      const had =
        named !== undefined &&
        find(talk, Math.max(clause.from, named.from - 4), named.from, set('had have has got getting')) >= 0;
      const object =
        /^(?:it|them|that|those|this|the|all|both|every|everything|new|my|our|'em|em)$/.test(norm(i + 1)) ||
        clause.mentions.some((m) => m.from === i + 1);
      const active = doers.has(norm(k)) && (object || /^some(?:body|one)$/.test(norm(k)));
      const glass =
        n !== 'filled' ||
        /^(?:windshield|windows_side|body_paint|tire)$/.test(partDone(talk, clause, i) ?? '');
      const about = n === 'packed' && norm(i + 1) === 'in';
      const made =
        /^(?:it|them|that|those|both)$/.test(norm(i - 1)) &&
        /^(?:had|have|got|has|getting)$/.test(norm(i - 2));
      const isPassive =
        made ||
        passive.has(norm(i - 1)) ||
        had ||
        (i === clause.from && /^(?:it|them|that)$/.test(norm(i + 1)));
      const shorthand =
        clause.mentions.some((m) => m.to === i && !m.aside && !m.weak) && isDated(talk, clause, i + 1);
      if (
        glass &&
        !about &&
        (active || isPassive || shorthand) &&
        put(partDone(talk, clause, i), state, i, 1, { polarity })
      )
        continue;
    }
    // "I put those in new last spring", "hung a fresh rod in it", "the batteries went in two summers back"
    if (
      /^(?:put|putting|hung|bolted|installed|threw|went)$/.test(n) &&
      denialBefore(talk, clause, i) === undefined &&
      !/^(?:me|us|him|you)$/.test(norm(i + 1))
    ) {
      const fresh = find(talk, i + 1, Math.min(clause.to, i + 6), set('new fresh another'));
      const inside = find(talk, i + 1, Math.min(clause.to, i + 6), set('in on'));
      const dated = isDated(talk, clause, i + 1);
      const will = find(talk, Math.max(clause.from, i - 5), i, set("will 'll am 'm going gonna be to")) >= 0;
      const ok =
        n === 'went'
          ? /^(?:in|on|down|up)$/.test(norm(i + 1)) &&
            dated &&
            (norm(i + 1) === 'in' || find(talk, clause.from, i, set('new fresh')) >= 0)
          : (fresh >= 0 && (inside >= 0 || dated)) ||
            (inside >= 0 && inside - i <= 3 && dated && n !== 'putting');
      if (
        ok &&
        (n === 'went' ||
          will ||
          find(talk, clause.from, i, doers) >= 0 ||
          i === clause.from ||
          norm(i - 1) === 'and')
      ) {
        const named = n === 'went' ? subjectOf(talk, clause, i) : partDone(talk, clause, i);
        if (put(named, will ? 'advised' : 'replaced', i, 1, will ? { aspect: 'advice' } : {})) continue;
      }
    }
    // what is promised: "we'll reseal that", "I am changing it", "the seal is on order"
    // "we replace both alarms before it goes out"
    const soon =
      doBase.has(n) &&
      /^(?:i|we|they|shop|guys|always)$/.test(norm(i - 1)) &&
      words
        .slice(Math.max(0, i - 14), i + 14)
        .some(
          (w, k, a) =>
            w.norm === 'before' &&
            /^(?:it|she|you|delivery|sale|we|they|pickup|anybody|somebody)$/.test(a[k + 1]?.norm ?? ''),
        );
    // "reglue the wallpaper and patch the dash": promised before the "and"
    const joined =
      doBase.has(n) && norm(i - 1) === 'and' && out.some((d) => d.aspect === 'advice' && i - d.at < 8);
    const promise =
      soon ||
      joined ||
      (doing.has(n) &&
        /^(?:am|'m|are|'re|be|is)$/.test(norm(i - 1)) &&
        find(talk, Math.max(clause.from, i - 4), i, set("i we shop they 'll will 'm")) >= 0) ||
      (doBase.has(n) &&
        find(talk, Math.max(clause.from, i - 6), i, set("will 'll gonna going promised agreed")) >= 0 &&
        find(talk, clause.from, i, set('i we shop they kid he she guys')) >= 0 &&
        find(talk, clause.from, i, set('you to-be if')) < 0) ||
      (pasts.has(n) &&
        find(talk, clause.from, i, set("will 'll")) >= 0 &&
        find(talk, clause.from, i, set('i we have get')) >= 0 &&
        find(talk, clause.from, i, set('you')) < 0) ||
      (n === 'order' && norm(i - 1) === 'on') ||
      (n === 'promised' && find(talk, clause.from, i, set('i we they shop')) >= 0);
    if (promise && denialBefore(talk, clause, i) === undefined) {
      const object = clause.mentions.find((m) => !m.aside && m.from > i && m.from - i <= 4);
      const named = object?.parts[0] ?? partDone(talk, clause, i);
      if (named !== 'coach' && put(named, 'advised', i, 1, { aspect: 'advice' })) continue;
    }
    // "it wants a battery", "they're due for a reseal"
    if (
      /^(?:wants|needs|want|need)$/.test(n) &&
      /^(?:a|an|new|another|some|that|both)$/.test(norm(i + 1)) &&
      !/^(?:you|i|we|to|don't|doesn't|who|he|she)$/.test(norm(i - 1)) &&
      denialBefore(talk, clause, i) === undefined
    ) {
      const before = clause.mentions.some((m) => !m.aside && m.to <= i);
      const subject = before || /^(?:it|they|that|this|one|which)$/.test(norm(i - 1));
      if (
        (subject || (i === clause.from && /s$/.test(n))) &&
        put(subjectOf(talk, clause, i), 'advised', i, 1, { aspect: 'advice', polarity: 'bad' })
      )
        continue;
    }
    if (
      /^(?:original|aftermarket|unplugged|disconnected|prewired|unhooked|winterized|dewinterized)$/.test(n) &&
      denialBefore(talk, clause, i) === undefined
    ) {
      const article = /^(?:the|an|all)$/.test(norm(i - 1)) ? i - 2 : i - 1;
      const said =
        /^(?:is|are|'s|'re|was|were|still|been|its)$/.test(norm(article)) ||
        clause.mentions.some((m) => m.to === i);
      const next =
        clause.mentions.some((m) => m.from === i + 1) ||
        /^(?:owner|owners|price|plan|title|bill|window)$/.test(norm(i + 1));
      if (said && !next && put(subjectOf(talk, clause, i), 'noted', i, 1)) continue;
    }
  }
  return out;
}

const keeping =
  /^(?:kept|stored|garaged|wintered|parked|slept|lived|sat|housed|sitting|lives|sleeps|stays|stored|spent)$/;
const shelters = set(
  'garage garages barn barns shed sheds shelter cover covered carport indoors inside outdoors outside building hangar storage roof warehouse pole',
);
/** Where the clause says how the coach was kept: the index of its verb. */
function storedAt(talk: Talk, clause: Clause): number | undefined {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const n = words[i]?.norm ?? '';
    if (!keeping.test(n)) continue;
    const own = clause.mentions.some(
      (m) =>
        !m.aside &&
        !m.weak &&
        m.to <= i &&
        !m.parts.includes('coach') &&
        !m.parts.includes('storage_history'),
    );
    if (own || find(talk, clause.from, i, set('i we you people folks owner')) >= 0) continue;
    const where = find(talk, i + 1, Math.min(clause.to, i + 7), shelters);
    const always = /^(?:been|always|was|its|it)$/.test(words[i - 1]?.norm ?? '');
    if (
      n === 'garaged' ||
      (where >= 0 &&
        (always ||
          /^(?:it|she|he|they|that)$/.test(words[i - 1]?.norm ?? '') ||
          find(talk, clause.from, i, set("she it coach rig 's")) >= 0))
    )
      return i;
  }
  return undefined;
}

const papers = /^(?:title_doc|manuals_bag|records_folder)$/;
const places = set(
  'hand here drawer folder safe desk glovebox box file bag office bank lender cabinet glove binder kitchen envelope',
);
/** "The title's in my safe", "the bank's still got the title": where the papers are. */
export function hearPapers(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  const m = clause.mentions.find((x) => !x.aside && papers.test(x.parts[0] ?? ''));
  const lead = words[clause.from]?.norm ?? '';
  const part =
    m?.parts[0] ??
    (/^(?:it|the|they)$/.test(lead) ? talk.recent[0]?.parts.find((p) => papers.test(p)) : undefined);
  if (!part || (talk.recent[0] && !m && clause.from - talk.recent[0].at > 25)) return [];
  const at = find(talk, m ? m.to : clause.from, clause.to, places);
  const back = m ? find(talk, clause.from, m.from, set("kept have got 've has holds")) : -1;
  const i = at >= 0 ? at : back;
  if (i < 0 || taken[i] || talk.scopes.elsewhere[i] || talk.scopes.denied[i]) return [];
  return [
    draftOf(
      talk,
      clause,
      taken,
      { part, aspect: 'present', state: 'present', sense: 'condition', polarity: 'neutral', weight: 0.6 },
      i,
      1,
    ),
  ];
}
