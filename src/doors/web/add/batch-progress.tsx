// Why: how far each file and the whole have come, in words and as a line, with a way to stop.
import type { Batch, BatchFile } from './use-batch.ts';

const size = (bytes: number): string =>
  bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1e3))} kB` : `${(bytes / 1e6).toFixed(1)} MB`;

function says(f: BatchFile): string {
  if (f.state === 'on its way') return `${Math.round(f.sent * 100)} % of ${size(f.bytes)} sent`;
  if (f.state === 'sent') return `${size(f.bytes)} sent`;
  return f.state === 'waits' ? `${size(f.bytes)}, waits` : 'not sent';
}

export function BatchProgress({ batch, onStop }: { batch: Batch; onStop: () => void }) {
  const whole = batch.files.reduce((sum, f) => sum + f.bytes, 0);
  const gone = batch.files.reduce((sum, f) => sum + f.bytes * f.sent, 0);
  const sending = batch.step === 'sending';
  const running = sending || batch.step === 'understanding';
  const share = sending ? (whole > 0 ? gone / whole : 0) : (batch.job?.progress ?? 0);
  const doing = sending
    ? `Sending ${batch.files.length === 1 ? 'one file' : `${batch.files.length} files`}: ${Math.round(share * 100)} %`
    : (batch.job?.doing ?? 'Reading the files');
  return (
    <section aria-label="Progress">
      {running && (
        <div className="row" style={{ margin: '14px 0 6px' }}>
          <span style={{ flex: 1 }} aria-live="polite">
            {doing}
          </span>
          <button type="button" onClick={onStop}>
            Stop
          </button>
          <progress value={share} max={1} aria-label={sending ? 'Files sent' : 'Files read'} />
        </div>
      )}
      {(sending || batch.step === 'trouble' || batch.step === 'stopped') && (
        <ul className="lines">
          {batch.files.map((f) => (
            <li key={f.name} className="file-line">
              <span>{f.name}</span>
              <progress value={f.sent} max={1} aria-label={`${f.name} sent`} />
              <span className="small soft num">{says(f)}</span>
              {f.problem && (
                <span className="small">
                  {f.problem.says} {f.problem.remedy}
                </span>
              )}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
