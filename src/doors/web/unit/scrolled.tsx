// Why: another sheet begins at its top; what is chosen on it then brings itself into sight.
import { type ReactNode, useLayoutEffect, useRef } from 'react';

export function Scrolled({ to, children }: { to: string; children: ReactNode }) {
  const ref = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of sheet that asks for it
  useLayoutEffect(() => {
    ref.current?.scrollTo(0, 0);
    ref.current?.querySelector('main')?.scrollTo(0, 0);
  }, [to]);
  return (
    <div className="scroll" ref={ref}>
      {children}
    </div>
  );
}
