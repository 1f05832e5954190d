// Why: somebody with no signal must see that what they wrote is safe, and what the server would not take.
import { useSyncExternalStore } from 'react';
import { forgetRefused, outbox, send, watchOutbox } from './outbox.ts';

export function WaitingBanner() {
  const box = useSyncExternalStore(watchOutbox, outbox);
  const n = box.waiting.length;
  if (n === 0 && box.refused.length === 0) return null;
  return (
    <section className="banner" aria-label="Not yet sent" aria-live="polite">
      {n > 0 && (box.offline || box.full) && (
        <p className="row">
          <span>
            {box.full
              ? 'This device has no room left: keep this page open until everything is sent. '
              : 'The server cannot be reached. What you wrote is kept on this device. '}
            {n === 1 ? 'One thing waits' : `${n} things wait`} to be sent.
          </span>
          <button type="button" onClick={() => void send()}>
            Send now
          </button>
        </p>
      )}
      {box.refused.map(({ entry, problem }) => (
        <p className="row" key={entry.id}>
          <span>
            Something you wrote was not taken: {problem.says} {problem.remedy}
          </span>
          <button type="button" onClick={() => forgetRefused(entry.id)}>
            I have read it
          </button>
        </p>
      ))}
    </section>
  );
}
