// Why: what is in focus on a sheet stands in its address, so that going back, opening again and sending it to somebody all work.
import { useCallback } from 'react';
import { useSearchParams } from 'wouter';

/** The chosen thing's id and how to choose another; choosing the chosen one again lets it go. */
export function useChosen(): readonly [string | undefined, (id: string | undefined) => void] {
  const [params, setParams] = useSearchParams();
  const chosen = params.get('on') ?? undefined;
  const choose = useCallback(
    (id: string | undefined) =>
      setParams(
        (had) => {
          const next = new URLSearchParams(had);
          if (id === undefined || had.get('on') === id) next.delete('on');
          else next.set('on', id);
          return next;
        },
        { replace: true },
      ),
    [setParams],
  );
  return [chosen, choose];
}
