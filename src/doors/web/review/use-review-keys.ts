// Why: reviewing is done from the keyboard, one key each, and never while somebody is typing.
import { useEffect, useRef } from 'react';

export interface ReviewKeys {
  readonly next: () => void;
  readonly previous: () => void;
  readonly accept: () => void;
  readonly reject: () => void;
  readonly fix: () => void;
  readonly play: () => void;
  readonly help: () => void;
}

const actions: Readonly<Record<string, keyof ReviewKeys>> = {
  j: 'next',
  ArrowDown: 'next',
  k: 'previous',
  ArrowUp: 'previous',
  a: 'accept',
  r: 'reject',
  f: 'fix',
  ' ': 'play',
  '?': 'help',
};

const typing = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  target.closest('input:not([type="radio"]), textarea, select, dialog, [role="slider"]') !== null;

/** A space or an arrow on a control is that control's own. */
const itsOwn = (key: string, target: EventTarget | null): boolean => {
  if (!(target instanceof HTMLElement)) return false;
  if (key === ' ') return target.closest('button, a, input') !== null && target.closest('.line') === null;
  return key.startsWith('Arrow') && target.closest('input') !== null;
};

export function useReviewKeys(keys: ReviewKeys): void {
  const now = useRef(keys);
  now.current = keys;
  useEffect(() => {
    const hear = (e: KeyboardEvent): void => {
      const action = actions[e.key];
      if (!action || e.ctrlKey || e.metaKey || e.altKey || typing(e.target) || itsOwn(e.key, e.target))
        return;
      e.preventDefault();
      now.current[action]();
    };
    document.addEventListener('keydown', hear);
    return () => document.removeEventListener('keydown', hear);
  }, []);
}
