// Why: how a unit stands, in five numbers with their words.
import type { Verdict } from '../../../judged/rule.ts';
import { verdictClass } from './verdict-mark.tsx';

const order: readonly Verdict[] = ['stop', 'repair', 'watch', 'sound', 'not seen'];

export function Tally({ tally, small }: { tally: Readonly<Record<Verdict, number>>; small?: boolean }) {
  return (
    <div className={small ? 'mini-tally' : 'tally'}>
      {order.map((v) => (
        <span key={v} className={verdictClass(v)}>
          <b>{tally[v]}</b> {v}
        </span>
      ))}
    </div>
  );
}
