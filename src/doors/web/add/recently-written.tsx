// Why: what was just written stands under the form, so that a slip is seen and corrected at once.
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import { useUnit } from '../unit/unit-context.ts';

export function RecentlyWritten() {
  const { packet, rule } = useUnit();
  const written = [...packet.record.standing.values()].filter(
    (o) => o.device === 'web' && o.source.from === 'typed',
  );
  const shown = written.sort((a, b) => (a.at < b.at ? 1 : -1)).slice(0, 6);
  if (shown.length === 0) return null;
  return (
    <>
      <h3>Written by hand, the newest first</h3>
      <ul className="lines">
        {shown.map((o) => (
          <li key={o.id} className="row" style={{ justifyContent: 'space-between' }}>
            <span>
              <strong>{subjectTitle(o)}</strong>: {factWords(o)}
            </span>
            <button type="button" className="text small" onClick={() => rule(o, 'reject')}>
              Reject it
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
