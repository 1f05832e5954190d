// Why: a verdict is read by its word, then its glyph, then its colour: never by colour alone.
import type { Verdict } from '../../../judged/rule.ts';

/** The class that gives a verdict its colour. */
export const verdictClass = (v: Verdict): string => v.replace(' ', '-');

/** The shapes of a verdict's glyph about a centre of 10, 10: ring with bar, triangle, half ring, full ring, broken ring. */
export function VerdictShape({ verdict }: { verdict: Verdict }) {
  const ring = { cx: 10, cy: 10, r: 8.5, strokeWidth: 2, stroke: 'currentColor' };
  switch (verdict) {
    case 'stop':
      return (
        <>
          <circle {...ring} fill="var(--sheet)" />
          <rect x="4.5" y="8" width="11" height="4" fill="currentColor" />
        </>
      );
    case 'repair':
      return <path d="M10 2l8.5 15h-17z" fill="var(--sheet)" stroke="currentColor" strokeWidth="2" />;
    case 'watch':
      return (
        <>
          <circle {...ring} fill="var(--sheet)" />
          <path d="M10 1.5a8.5 8.5 0 0 1 0 17z" fill="currentColor" />
        </>
      );
    case 'sound':
      return <circle {...ring} fill="currentColor" />;
    case 'not seen':
      return <circle {...ring} fill="var(--sheet)" strokeDasharray="3 3" />;
  }
}

export function VerdictMark({ verdict }: { verdict: Verdict }) {
  return (
    <span className={`verdict ${verdictClass(verdict)}`}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <VerdictShape verdict={verdict} />
      </svg>
      {verdict}
    </span>
  );
}
