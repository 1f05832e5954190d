// Why: whether a sentence is backed is read by its word and its mark: a tick, a gap, a cross.
import type { Claim } from '../../../published/document.ts';

const shown: Record<
  Claim['standing'],
  { readonly tone: string; readonly path: string; readonly dash?: string }
> = {
  backed: { tone: 'sound', path: 'M2 9l4 4 8-10' },
  unbacked: { tone: 'watch', path: 'M2 8h12', dash: '3 2' },
  contradicted: { tone: 'stop', path: 'M3 3l10 10M13 3L3 13' },
};

export function StandingMark({ standing }: { standing: Claim['standing'] }) {
  const { tone, path, dash } = shown[standing];
  return (
    <span className={`standing ${tone}`}>
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d={path} fill="none" stroke="currentColor" strokeWidth="2.2" strokeDasharray={dash} />
      </svg>
      {standing}
    </span>
  );
}
