// Why: the keys are quick only for somebody who can look them up.
import { Fragment, type RefObject } from 'react';
import { keyName, reviewKeys } from './use-review-keys.ts';

export function KeysHelp({ ref }: { ref: RefObject<HTMLDialogElement | null> }) {
  return (
    <dialog ref={ref} aria-labelledby="keys-head">
      <h2 id="keys-head" style={{ marginTop: 0 }}>
        Keys for reviewing
      </h2>
      <dl className="keys">
        {reviewKeys.map(({ keys, does }) => (
          <Fragment key={does}>
            <dt>
              {keys.map((k) => (
                <kbd key={k}>{keyName(k)}</kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </Fragment>
        ))}
        <dt>
          <kbd>1</kbd>
          <kbd>…</kbd>
        </dt>
        <dd>reject that one of the breath</dd>
      </dl>
      <form method="dialog">
        <button type="submit" className="chief">
          Back to reviewing
        </button>
      </form>
    </dialog>
  );
}
