// Why: every page needs to know whose yard this is and what day it is there; remembered, so that it also opens with no signal.
import { createContext, type ReactNode, useContext, useEffect } from 'react';
import { type Day, readDay } from '../../../units/day.ts';
import type { About } from '../../wire/api.ts';
import { Trouble } from './trouble.tsx';
import { useAsk } from './use-ask.ts';

const Context = createContext<About | undefined>(undefined);
const key = 'walkwright.about';

/** Whose yard, which day, which unit is the invented one. */
export function useAbout(): About {
  const about = useContext(Context);
  if (!about) throw new Error('useAbout: outside its provider');
  return about;
}

/** The day in the yard: the server's, or this device's own when the server has not said. */
export function useToday(): Day {
  const { today } = useAbout();
  const own = new Date();
  const local = `${own.getFullYear()}-${String(own.getMonth() + 1).padStart(2, '0')}-${String(own.getDate()).padStart(2, '0')}`;
  return readDay(today) ?? (local as Day);
}

function remembered(): About | undefined {
  const raw = localStorage.getItem(key);
  return raw === null ? undefined : { ...(JSON.parse(raw) as About), today: '' };
}

export function AboutProvider({ children }: { children: ReactNode }) {
  const { answer, again } = useAsk<About>('/api/about');
  useEffect(() => {
    if (answer?.ok) localStorage.setItem(key, JSON.stringify(answer.value));
  }, [answer]);
  const about = answer?.ok ? answer.value : answer ? remembered() : undefined;
  if (about) return <Context value={about}>{children}</Context>;
  return (
    <main className="lead" id="sheet">
      <h1>Walkwright</h1>
      {answer && !answer.ok ? (
        <Trouble problem={answer.problem} again={again} />
      ) : (
        <p className="soft">Opening the yard.</p>
      )}
    </main>
  );
}
