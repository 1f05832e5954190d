// Why: everything a reviewer does goes through here, so that each of it is one step that can be taken back.
import { useCallback, useState } from 'react';
import type { Observation } from '../../../said/entry.ts';
import type { Draft } from '../kept/new-entry.ts';
import { useUnit } from '../unit/unit-context.ts';
import { keepSteps, type Step, stepsOf } from './history.ts';

export interface Rulings {
  /** Rules on observations as one step. */
  readonly ruleOn: (
    what: readonly { readonly of: Observation; readonly ruling: 'accept' | 'reject' }[],
    says: string,
    at: string | undefined,
    why?: string,
  ) => void;
  /** Writes an observation, believed because a person wrote it, as one step; gives back its id. */
  readonly add: (draft: Draft<'observation'>, says: string, at: string | undefined) => string | undefined;
  /** Takes the last step back: the observation that was in focus then. */
  readonly undo: () => string | undefined;
  readonly steps: readonly Step[];
  /** What was done last, as a sentence. */
  readonly says: string;
}

export function useRulings(): Rulings {
  const { unit, rulings, write } = useUnit();
  const [steps, setSteps] = useState(() => stepsOf(unit));
  const [says, setSays] = useState('');
  const did = useCallback(
    (step: Step) => {
      setSteps((had) => keepSteps(unit, [...had, step]));
      setSays(step.says);
    },
    [unit],
  );
  const ruleOn = useCallback<Rulings['ruleOn']>(
    (what, sentence, at, why) => {
      if (what.length === 0) return;
      write<'ruling'>(
        ...what.map(({ of, ruling }) => ({
          kind: 'ruling' as const,
          on: of.id,
          ruling,
          ...(why ? { why } : {}),
        })),
      );
      did({
        says: sentence,
        at,
        back: what.map(({ of }) => ({ on: of.id, ruling: rulings.get(of.id)?.ruling ?? 'open' })),
      });
    },
    [write, rulings, did],
  );
  const add = useCallback<Rulings['add']>(
    (draft, sentence, at) => {
      const [made] = write<'observation'>(draft);
      if (!made) return undefined;
      write<'ruling'>({ kind: 'ruling', on: made.id, ruling: 'accept', why: 'written by the reviewer' });
      did({ says: sentence, at, back: [{ on: made.id, ruling: 'reject' }] });
      return made.id;
    },
    [write, did],
  );
  const undo = useCallback(() => {
    const last = steps.at(-1);
    if (!last) {
      setSays('There is nothing more to take back.');
      return undefined;
    }
    write<'ruling'>(
      ...last.back.map(
        ({ on, ruling }): Draft<'ruling'> => ({ kind: 'ruling', on, ruling, why: 'taken back in review' }),
      ),
    );
    setSteps((had) => keepSteps(unit, had.slice(0, -1)));
    setSays(`Taken back: ${lower(last.says)}`);
    return last.at;
  }, [steps, unit, write]);
  return { ruleOn, add, undo, steps, says };
}

const lower = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);
