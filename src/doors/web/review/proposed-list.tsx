// Why: what was heard, one line each, the doubtful first; the chosen one opens with what can be done about it.
import { ObservationForm } from '../add/observation-form.tsx';
import { type Order, orders, type Proposed } from './proposed.ts';
import { ProposedLine } from './proposed-line.tsx';

interface Props {
  readonly all: readonly Proposed[];
  readonly shown: readonly Proposed[];
  readonly chosen: Proposed | undefined;
  readonly order: Order;
  readonly onOrder: (order: Order) => void;
  readonly onShow: (id: string) => void;
  readonly onDecide: (ruling: 'accept' | 'reject') => void;
  readonly fixing: boolean;
  readonly onFix: (fixing: boolean) => void;
  readonly sure: number;
  readonly onAcceptSure: () => void;
  readonly onHelp: () => void;
}

export function ProposedList(p: Props) {
  const waits = p.all.filter((x) => x.state === 'waits').length;
  return (
    <>
      <div className="row" style={{ justifyContent: 'space-between' }}>
        <h2 style={{ margin: 0 }}>
          {waits === 0 ? 'Everything heard has been reviewed' : `${waits} of ${p.all.length} wait for you`}
        </h2>
        <button type="button" className="text small wide-only" onClick={p.onHelp}>
          Keys: press ?
        </button>
      </div>
      <div className="choices quiet" role="radiogroup" aria-label="Order">
        {orders.map((o) => (
          <label key={o}>
            <input type="radio" name="order" checked={p.order === o} onChange={() => p.onOrder(o)} />
            <span>{o}</span>
          </label>
        ))}
      </div>
      {p.sure > 0 && (
        <p className="row">
          <button type="button" onClick={p.onAcceptSure}>
            Accept all {p.sure} that were heard surely
          </button>
        </p>
      )}
      {p.shown.length === 0 && (
        <p>{p.all.length === 0 ? 'Nothing was made out of these words yet.' : 'Nothing waits.'}</p>
      )}
      <ul className="lines">
        {p.shown.map((x) => {
          const isChosen = x === p.chosen;
          return (
            <ProposedLine
              key={x.of.id}
              of={x}
              chosen={isChosen}
              onShow={p.onShow}
              onDecide={p.onDecide}
              onFix={() => p.onFix(!p.fixing)}
            >
              {isChosen && p.fixing && <ObservationForm replaces={x.of} onDone={() => p.onFix(false)} />}
            </ProposedLine>
          );
        })}
      </ul>
    </>
  );
}
