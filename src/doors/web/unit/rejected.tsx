// Why: a rejection takes a thing off the screen at once, so the way back must be in sight.
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import type { Observation } from '../../../said/entry.ts';

interface Props {
  readonly of: Observation;
  readonly onTakeBack: () => void;
  readonly onLeave: () => void;
}

export function Rejected({ of: o, onTakeBack, onLeave }: Props) {
  return (
    <div className="banner" role="status">
      <p className="row">
        <span>
          Rejected: {subjectTitle(o)}, {factWords(o)}. It stays in the log; nothing follows from it any more.
        </span>
        <button type="button" onClick={onTakeBack}>
          Take that back
        </button>
        <button type="button" onClick={onLeave}>
          Leave it
        </button>
      </p>
    </div>
  );
}
