// Why: a verdict is only worth its evidence: words, reading with its doubt, limit with its author, how near, what to do and who may.
import { Link } from 'wouter';
import { cautionOf } from '../../../judged/caution.ts';
import type { Finding } from '../../../judged/finding.ts';
import { sayAsked } from '../../words/say-asked.ts';
import { sayDoubt } from '../../words/say-evidence.ts';
import { sayCitation, sayLimit } from '../../words/say-limit.ts';
import { sayMoneyRange } from '../../words/say-money-range.ts';
import { sayNear } from '../../words/say-near.ts';
import { aspectName, saySides, subjectTitle } from '../../words/say-value.ts';
import { sayWeight, verdictMeanings } from '../../words/say-verdict.ts';
import { AllSaid } from '../margin/all-said.tsx';
import { FactPhotos } from '../margin/fact-photos.tsx';
import { VerdictMark } from '../mark/verdict-mark.tsx';
import { useUnit } from '../unit/unit-context.ts';

export function FindingEvidence({ finding: f }: { finding: Finding }) {
  const { unit, packet } = useUnit();
  const { fact, limit } = f;
  const caution = cautionOf(f.caution);
  const near = sayNear(f);
  const others = f.limits.filter((l) => l !== limit);
  const cites = limit ? limit.cites : f.cites;
  const job = packet.jobs.find((j) => j.findings.includes(f.id));
  const again = new URLSearchParams({
    part: f.part,
    aspect: f.aspect,
    ...(f.place ? { place: f.place } : {}),
  });
  const last = fact?.figure ? undefined : fact?.evidence[0];
  if (last) again.set('replaces', last.id);
  return (
    <div className="evidence">
      <p className="kicker">evidence</p>
      <h2>{subjectTitle(f)}</h2>
      <p className="row">
        <VerdictMark verdict={f.verdict} /> <span className="small soft">{verdictMeanings[f.verdict]}</span>
      </p>
      <p>{f.reason}</p>
      {fact && fact.evidence.length > 0 && (
        <AllSaid of={fact.evidence} first={fact.standing === 'conflict' ? 4 : 1} />
      )}
      <FactPhotos part={f.part} place={f.place} />
      <dl className="told">
        <dt>asked</dt>
        <dd>{f.asks}</dd>
        {fact && (
          <>
            <dt>{fact.standing === 'conflict' ? 'disagree' : fact.figure ? 'worked out' : 'reading'}</dt>
            <dd>
              {fact.figure ? (
                <Link
                  className="num"
                  href={`/unit/${unit}/figures?on=${encodeURIComponent(`${fact.figure}/${fact.place ?? ''}`)}`}
                >
                  {saySides(fact)}
                </Link>
              ) : (
                <span className="num">{saySides(fact)}</span>
              )}{' '}
              <span className="soft">{aspectName(f.part, f.aspect)}</span>
            </dd>
            {fact.doubts.length > 0 && (
              <>
                <dt>doubt</dt>
                <dd>{fact.doubts.map(sayDoubt).join('; ')}</dd>
              </>
            )}
          </>
        )}
        {limit && (
          <>
            <dt>limit</dt>
            <dd>{sayLimit(limit)}</dd>
          </>
        )}
        {near && (
          <>
            <dt>how near</dt>
            <dd>{near}</dd>
          </>
        )}
        {others.length > 0 && (
          <>
            <dt>also</dt>
            <dd>{others.map((l) => sayLimit(l)).join('; ')}</dd>
          </>
        )}
        {f.verdict !== 'sound' && f.verdict !== 'not seen' && (
          <>
            <dt>why it matters</dt>
            <dd>{sayWeight(f.weight)}</dd>
          </>
        )}
      </dl>
      {caution && (
        <div className="care">
          <p>
            <strong>Take care.</strong> {caution}
          </p>
        </div>
      )}
      <dl className="told">
        {f.outcome === 'fails' && (
          <>
            <dt>what to do</dt>
            <dd>{f.next}</dd>
            <dt>who may do it</dt>
            <dd>{f.who}</dd>
          </>
        )}
        {job && (
          <>
            <dt>the work</dt>
            <dd>
              {job.what}
              {job.hours && `, ${job.hours[0]} to ${job.hours[1]} hours`}
              {job.cost && `, ${sayMoneyRange(job.cost)}`}
            </dd>
            {job.asked && (
              <>
                <dt>asked for</dt>
                <dd>{job.asked.map(sayAsked).join('; ')}</dd>
              </>
            )}
          </>
        )}
        <dt>how to look</dt>
        <dd>
          {f.look}{' '}
          <span className="soft">About {f.minutes === 1 ? 'one minute' : `${f.minutes} minutes`}.</span>
        </dd>
      </dl>
      <div className="row">
        <Link className="button" href={`/unit/${unit}/add?${again}`}>
          {fact ? 'Measure or look again' : 'Write down what you see'}
        </Link>
      </div>
      {cites.length > 0 && (
        <>
          <h3>Who says so</h3>
          {cites.map((c) => (
            <p key={`${c.source.id}${c.clause}`} className="small soft">
              {sayCitation(c)}. {c.source.scope}
            </p>
          ))}
        </>
      )}
    </div>
  );
}
