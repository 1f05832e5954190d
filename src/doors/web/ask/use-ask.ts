// Why: a screen asks, shows what it has, and can ask again; a late answer to an old question is dropped.
import { useCallback, useEffect, useRef, useState } from 'react';
import { type Answer, ask } from './ask.ts';

export interface Asked<T> {
  readonly answer: Answer<T> | undefined;
  readonly again: () => void;
}

/** GETs a path when mounted, and again when asked. The last good answer stays on screen while a new one is on its way. */
export function useAsk<T>(path: string): Asked<T> {
  const [answer, setAnswer] = useState<Answer<T>>();
  const turn = useRef(0);
  const again = useCallback(() => {
    turn.current += 1;
    const mine = turn.current;
    void ask<T>(path).then((got) => {
      if (mine !== turn.current) return;
      setAnswer((had) => (!got.ok && got.offline && had?.ok ? had : got));
    });
  }, [path]);
  useEffect(again, [again]);
  return { answer, again };
}
