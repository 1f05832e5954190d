// Why: every sheet is a lead and a margin; the margin holds the evidence of whatever is in focus.
import type { ReactNode } from 'react';
import { useNarrow } from './use-narrow.ts';

interface Props {
  readonly children: ReactNode;
  /** What stands in the margin on a wide screen. On a narrow one the lines open it themselves. */
  readonly margin: ReactNode;
  readonly label?: string;
}

export function Sheet({ children, margin, label = 'Evidence' }: Props) {
  const narrow = useNarrow();
  return (
    <div className="sheet with-margin">
      <div className="lead">{children}</div>
      {!narrow && (
        <aside className="margin" aria-label={label}>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
          <div className="held" tabIndex={0}>
            {margin}
          </div>
        </aside>
      )}
    </div>
  );
}
