// Why: one look at where the limit stands, where the reading stands and how wide its doubt is.
import type { Finding } from '../../../judged/finding.ts';
import { limitStrip } from '../../../published/limit-strip.ts';
import { sayNear } from '../../words/say-near.ts';
import { verdictClass } from '../mark/verdict-mark.tsx';

const left = 8;
const wide = 254;
const x = (share: number): number => left + share * wide;

/** Keeps a label inside the strip: its anchor, where it would run over an end. */
function anchorAt(
  at: number,
  letters: number,
): { readonly x: number; readonly textAnchor: 'start' | 'middle' | 'end' } {
  const half = (letters * 6.7) / 2;
  if (at - half < 0) return { x: 0, textAnchor: 'start' };
  if (at + half > 270) return { x: 270, textAnchor: 'end' };
  return { x: at, textAnchor: 'middle' };
}

export function LimitStrip({ finding }: { finding: Finding }) {
  const s = limitStrip(finding);
  if (!s) return null;
  const [badFrom, badTo] = s.bad;
  const [from, to] = s.doubt;
  return (
    <svg
      className={`strip ${verdictClass(s.verdict)}`}
      viewBox="0 0 270 50"
      role="img"
      aria-label={`${s.readingLabel} against ${s.limitLabel}; ${sayNear(finding)}`}
    >
      <path d={`M${left} 26h${wide}`} stroke="var(--track)" strokeWidth="8" />
      <path d={`M${x(badFrom)} 26H${x(badTo)}`} stroke="currentColor" strokeWidth="8" opacity=".4" />
      <path d={`M${x(s.limit)} 14v19`} stroke="var(--ink)" strokeWidth="2" />
      {to > from && (
        <path
          d={`M${x(from)} 26H${x(to)}M${x(from)} 22v8M${x(to)} 22v8`}
          stroke="var(--ink)"
          strokeWidth="3"
        />
      )}
      <circle cx={x(s.reading)} cy="26" r="5.5" fill="currentColor" stroke="var(--paper)" strokeWidth="1" />
      <text {...anchorAt(x(s.limit), s.limitLabel.length)} y="10">
        {s.limitLabel}
      </text>
      <text className="read" {...anchorAt(x(s.reading), s.readingLabel.length)} y="47">
        {s.readingLabel}
      </text>
    </svg>
  );
}
