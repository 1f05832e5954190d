// Why: a finding in one line: verdict, what it is about, why, and its reading against its limit.
import type { Finding } from '../../../judged/finding.ts';
import { saySides, subjectTitle } from '../../words/say-value.ts';
import { VerdictMark } from '../mark/verdict-mark.tsx';
import { LimitStrip } from '../strip/limit-strip.tsx';

export function FindingLine({ finding: f }: { finding: Finding }) {
  return (
    <>
      <VerdictMark verdict={f.verdict} />
      <span>
        <span className="name">{subjectTitle(f)}</span>
        <span className="why">{f.reason}</span>
      </span>
      <span className="beside">
        {f.limit && f.fact?.value.is === 'quantity' ? (
          <LimitStrip finding={f} />
        ) : (
          <span className="small soft">
            {f.fact ? saySides(f.fact) : `${f.minutes === 1 ? 'one minute' : `${f.minutes} minutes`} to look`}
          </span>
        )}
      </span>
    </>
  );
}
