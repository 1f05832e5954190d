// Why: accepting many unread is quick and a risk; how many, what that means, and that it can be taken back are said first.
import type { RefObject } from 'react';

interface Props {
  readonly ref: RefObject<HTMLDialogElement | null>;
  readonly count: number;
  readonly onAccept: () => void;
}

export function AcceptSure({ ref, count, onAccept }: Props) {
  const n = count === 1 ? 'the one' : `the ${count}`;
  return (
    <dialog ref={ref} aria-labelledby="sure-head">
      <form
        method="dialog"
        onSubmit={(e) => {
          const button = (e.nativeEvent as SubmitEvent).submitter;
          if (button instanceof HTMLButtonElement && button.value === 'accept') onAccept();
        }}
      >
        <h2 id="sure-head" style={{ marginTop: 0 }}>
          {count === 0
            ? 'Nothing that was heard surely waits'
            : `Accept ${n} that ${count === 1 ? 'was' : 'were'} heard surely?`}
        </h2>
        {count > 0 && (
          <p>
            They count as accepted without a look at each. On talk it was not tuned on, about one in ten of
            such was misheard. What is contradicted, doubtful, or what a stop rests on is not among them. The
            key <kbd>u</kbd> takes all of it back.
          </p>
        )}
        <div className="row">
          {count > 0 && (
            <button type="submit" value="accept" className="chief">
              Accept {count}
            </button>
          )}
          <button type="submit" value="no">
            Not now
          </button>
        </div>
      </form>
    </dialog>
  );
}
