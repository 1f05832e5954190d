// Why: reviewing is done from the keyboard, one key each, and never while somebody is typing.
import { useEffect, useRef } from 'react';

export interface ReviewKeys {
  readonly next: () => void;
  readonly previous: () => void;
  readonly accept: () => void;
  readonly breath: () => void;
  readonly reject: () => void;
  readonly only: () => void;
  readonly fix: () => void;
  readonly sure: () => void;
  readonly undo: () => void;
  readonly play: () => void;
  readonly playOn: () => void;
  readonly words: () => void;
  readonly make: () => void;
  readonly help: () => void;
}
type Act = keyof ReviewKeys;

/** Every key, as it is told to a person and as the browser names it. The only list of them there is. */
export const reviewKeys: readonly {
  readonly keys: readonly string[];
  readonly act: Act;
  readonly does: string;
}[] = [
  { keys: ['a'], act: 'accept', does: 'accept it and go on' },
  { keys: ['b'], act: 'breath', does: 'accept all that was heard in the same breath' },
  { keys: ['r'], act: 'reject', does: 'reject it and go on' },
  { keys: ['o'], act: 'only', does: 'only this is right: accept it, reject what contradicts it' },
  { keys: ['f'], act: 'fix', does: 'fix it: write what it should have been' },
  { keys: ['j', 'ArrowDown'], act: 'next', does: 'the next one' },
  { keys: ['k', 'ArrowUp'], act: 'previous', does: 'the one before' },
  { keys: ['p'], act: 'playOn', does: 'play from here' },
  { keys: [' '], act: 'play', does: 'play its words, or pause' },
  { keys: ['s'], act: 'sure', does: 'accept all that were heard surely' },
  { keys: ['u'], act: 'undo', does: 'undo the last step; again for the one before' },
  { keys: ['w'], act: 'words', does: 'choose words: arrows move, Shift and arrows take more' },
  { keys: ['m', 'Enter'], act: 'make', does: 'make an observation of the chosen words' },
  { keys: ['?'], act: 'help', does: 'show these keys' },
];

/** A key as it stands on the keyboard. */
export const keyName = (key: string): string => ({ ' ': 'space', ArrowDown: '↓', ArrowUp: '↑' })[key] ?? key;

const actions: ReadonlyMap<string, Act> = new Map(
  reviewKeys.flatMap((k) => k.keys.map((key) => [key, k.act])),
);

const typing = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  target.closest('input:not([type="radio"]), textarea, select, dialog, form, [role="slider"]') !== null;

/** Enter, space or an arrow on a control is that control's own. */
const itsOwn = (key: string, target: EventTarget | null): boolean => {
  if (!(target instanceof HTMLElement)) return false;
  if (key === 'Enter') return target.closest('button, a, input') !== null;
  if (key === ' ') return target.closest('button, a, input') !== null && target.closest('.line') === null;
  return key.startsWith('Arrow') && target.closest('input') !== null;
};

/** Hears the keys; `number` is told of 1 to 9; `first` may take a key before all others. */
export function useReviewKeys(
  keys: ReviewKeys,
  number: (n: number) => void,
  first: (e: KeyboardEvent) => boolean,
): void {
  const now = useRef({ keys, number, first });
  now.current = { keys, number, first };
  useEffect(() => {
    const hear = (e: KeyboardEvent): void => {
      if (e.altKey || typing(e.target)) return;
      if (e.ctrlKey || e.metaKey) {
        if (e.key !== 'z') return;
        e.preventDefault();
        now.current.keys.undo();
        return;
      }
      if (itsOwn(e.key, e.target)) return;
      if (now.current.first(e)) {
        e.preventDefault();
        return;
      }
      const action = actions.get(e.key);
      if (action) {
        e.preventDefault();
        now.current.keys[action]();
      } else if (/^[1-9]$/.test(e.key)) {
        e.preventDefault();
        now.current.number(Number(e.key));
      }
    };
    document.addEventListener('keydown', hear);
    return () => document.removeEventListener('keydown', hear);
  }, []);
}
