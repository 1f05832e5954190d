// Why: a line of a sheet is a button that puts its evidence into the margin, or under itself on a phone.
import { type ReactNode, useEffect, useRef } from 'react';
import { useNarrow } from './use-narrow.ts';

interface Props {
  readonly chosen: boolean;
  readonly onChoose: () => void;
  readonly evidence: () => ReactNode;
  readonly children: ReactNode;
  readonly kind?: string;
}

export function Line({ chosen, onChoose, evidence, children, kind = '' }: Props) {
  const narrow = useNarrow();
  const ref = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (chosen) ref.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  return (
    <li>
      <button ref={ref} type="button" className={`line ${kind}`} aria-expanded={chosen} onClick={onChoose}>
        {children}
      </button>
      {chosen && narrow && <div className="under-line">{evidence()}</div>}
    </li>
  );
}
