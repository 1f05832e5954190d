// Why: a sentence a stranger will read is tied to the words, readings, figures and findings behind it.
import { Link } from 'wouter';
import type { Claim } from '../../../published/document.ts';
import { sayBasis, sayDoubt } from '../../words/say-evidence.ts';
import { aspectName, saySides, sayValue, subjectTitle } from '../../words/say-value.ts';
import { AllSaid } from '../margin/all-said.tsx';
import { StandingMark } from '../mark/standing-mark.tsx';
import { VerdictMark } from '../mark/verdict-mark.tsx';
import { useUnit } from '../unit/unit-context.ts';

export function ClaimEvidence({ claim: c }: { claim: Claim }) {
  const { unit, packet } = useUnit();
  const findings = packet.findings.filter((f) => c.findings.includes(f.id));
  const figures = packet.figures.filter((f) => c.figures.includes(f.id));
  return (
    <div className="evidence">
      <p className="kicker">what stands behind it</p>
      <p className="claim-text">
        <strong>{c.text}</strong>
      </p>
      <p className="row">
        <StandingMark standing={c.standing} />
        <span className="small soft">
          {sayBasis(c.basis)}
          {!c.published && '; this sentence does not go out'}
        </span>
      </p>
      {c.rewording && <p>{c.rewording}</p>}
      <AllSaid of={c.evidence} first={2} withSubject />
      {c.evidence.length === 0 && c.figures.length === 0 && findings.length === 0 && (
        <p>Nothing that was said, measured or read is behind it.</p>
      )}
      {c.facts.length > 0 && (
        <dl className="told stacked">
          {c.facts.map((f) => (
            <div key={`${f.part}${f.aspect}${f.place}`} style={{ display: 'contents' }}>
              <dt>
                {subjectTitle(f)}, {aspectName(f.part, f.aspect)}
              </dt>
              <dd>
                <span className="num">{saySides(f)}</span>
                {f.doubts.length > 0 && <span className="soft"> {f.doubts.map(sayDoubt).join('; ')}</span>}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {figures.map((f) => (
        <p key={`${f.id}${f.place}`}>
          <Link href={`/unit/${unit}/figures?on=${encodeURIComponent(`${f.id}/${f.place ?? ''}`)}`}>
            {f.card.asks}
          </Link>{' '}
          {f.result.is === 'worked' && (
            <span className="num">{sayValue(f.result.value, f.card.gives.part, f.card.gives.aspect)}</span>
          )}
        </p>
      ))}
      {findings.map((f) => (
        <p key={f.id} className="row">
          <VerdictMark verdict={f.verdict} />
          <Link href={`/unit/${unit}/findings?on=${encodeURIComponent(f.id)}`}>{subjectTitle(f)}</Link>
        </p>
      ))}
    </div>
  );
}
