// Why: the keys are quick only for somebody who can look them up.
import type { RefObject } from 'react';

const keys: readonly (readonly [readonly string[], string])[] = [
  [['j', '↓'], 'the next one'],
  [['k', '↑'], 'the one before'],
  [['a'], 'accept it and go on'],
  [['r'], 'reject it and go on'],
  [['f'], 'fix it: write what it should have been'],
  [['space'], 'play its words, or pause'],
  [['?'], 'show these keys'],
];

export function KeysHelp({ ref }: { ref: RefObject<HTMLDialogElement | null> }) {
  return (
    <dialog ref={ref} aria-labelledby="keys-head">
      <h2 id="keys-head" style={{ marginTop: 0 }}>
        Keys for reviewing
      </h2>
      <dl className="keys">
        {keys.map(([names, does]) => (
          <div key={does} style={{ display: 'contents' }}>
            <dt>
              {names.map((n) => (
                <kbd key={n} style={{ marginRight: 6 }}>
                  {n}
                </kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <form method="dialog">
        <button type="submit" className="chief">
          Back to reviewing
        </button>
      </form>
    </dialog>
  );
}
