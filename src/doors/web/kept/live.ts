// Why: when somebody else writes, this page hears of it and fetches what is new.
import type { LiveEvent } from '../../wire/api.ts';
import { send } from './outbox.ts';

type Listener = (event: LiveEvent | undefined) => void;
const listeners = new Set<Listener>();
let source: EventSource | undefined;

/** Called with the event, or with nothing when something may have been missed: fetch what comes after your position. */
function tellAll(event: LiveEvent | undefined): void {
  for (const l of listeners) l(event);
}

function open(): void {
  source = new EventSource('/api/live');
  source.addEventListener('open', () => {
    void send();
    tellAll(undefined);
  });
  source.addEventListener('kept', (e) => tellAll(JSON.parse((e as MessageEvent<string>).data) as LiveEvent));
  source.addEventListener('error', () => {
    if (source?.readyState !== EventSource.CLOSED) return;
    source = undefined;
    setTimeout(() => listeners.size > 0 && !source && open(), 5000);
  });
}

/** Listens until the returned function is called. */
export function watchLive(listener: Listener): () => void {
  listeners.add(listener);
  if (!source) open();
  return () => listeners.delete(listener);
}

addEventListener('online', () => {
  void send();
  tellAll(undefined);
});
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') tellAll(undefined);
});
