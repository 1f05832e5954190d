// Why: what was heard, the contradicted and doubtful first; neighbours of one breath stand together and are ruled on together.

import type { ReactNode } from 'react';
import { subjectTitle } from '../../../published/plain-subject.ts';
import { Decide, type Decisions } from './decide.tsx';
import { Key } from './key.tsx';
import { isCalm, type Order, orders, type Proposed, together } from './proposed.ts';
import { ProposedLine } from './proposed-line.tsx';

interface Props extends Decisions {
  readonly all: readonly Proposed[];
  readonly shown: readonly Proposed[];
  readonly chosen: Proposed | undefined;
  readonly order: Order;
  readonly onOrder: (order: Order) => void;
  readonly onShow: (id: string) => void;
  readonly sure: number;
  readonly onSure: () => void;
  readonly onHelp: () => void;
  /** Stands open under what is in focus. */
  readonly children?: ReactNode;
}

export function ProposedList(p: Props) {
  const done = p.all.filter((x) => x.state !== 'waits').length;
  const waits = p.all.length - done;
  return (
    <>
      <div className="heard-head">
        <div className="row between">
          <h2>
            {waits === 0 ? 'Everything heard has been reviewed' : `${waits} of ${p.all.length} wait for you`}
          </h2>
          <button type="button" className="text small wide-only" onClick={p.onHelp}>
            Keys: press ?
          </button>
        </div>
        <span className="coverage" aria-hidden="true">
          <span style={{ width: `${(100 * done) / Math.max(1, p.all.length)}%` }} />
        </span>
        <div className="row between">
          <div className="choices quiet" role="radiogroup" aria-label="Order">
            {orders.map((o) => (
              <label key={o}>
                <input type="radio" name="order" checked={p.order === o} onChange={() => p.onOrder(o)} />
                <span>{o}</span>
              </label>
            ))}
          </div>
          {p.sure > 0 && (
            <button type="button" className="small" aria-keyshortcuts="s" onClick={p.onSure}>
              Accept all {p.sure} heard surely <Key name="s" />
            </button>
          )}
        </div>
      </div>
      {p.shown.length === 0 && (
        <p>{p.all.length === 0 ? 'Nothing was made out of these words yet.' : 'Nothing waits.'}</p>
      )}
      <ul className="lines">
        {together(p.shown).map((group) => {
          const isHere = p.chosen !== undefined && group.includes(p.chosen);
          const waiting = group.filter(isCalm).length;
          return (
            <li key={group[0]?.of.id} data-here={isHere}>
              {group.map((x, i) => (
                <ProposedLine
                  key={x.of.id}
                  of={x}
                  chosen={x === p.chosen}
                  same={i > 0 && subjectTitle(x.of) === subjectTitle(group[i - 1]!.of)}
                  number={isHere && group.length > 1 ? i + 1 : undefined}
                  onShow={p.onShow}
                />
              ))}
              {isHere && p.chosen && (
                <Decide
                  of={p.chosen}
                  breath={waiting}
                  onDecide={p.onDecide}
                  onBreath={p.onBreath}
                  onOnly={p.onOnly}
                  onFix={p.onFix}
                >
                  {p.children}
                </Decide>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
