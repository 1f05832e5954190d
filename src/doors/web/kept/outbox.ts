// Why: what somebody wrote is on this device before it is sent, and leaves it only when the server says it is kept.
import type { Entry } from '../../../said/entry.ts';
import type { AppendReply, Problem } from '../../wire/api.ts';
import { tell } from '../ask/ask.ts';

const prefix = 'walkwright.out.';
const refusedPrefix = 'walkwright.refused.';
const batch = 100;

/** What stands in the outbox: what waits, what the server would not take and why, and whether this device is full. */
export interface Outbox {
  readonly waiting: readonly Entry[];
  readonly refused: readonly { readonly entry: Entry; readonly problem: Problem }[];
  readonly full: boolean;
  readonly offline: boolean;
}

const listeners = new Set<() => void>();
/** Entries for which there was no room in the store of this device: kept in memory, and said so. */
const unstored = new Map<string, Entry>();
let offline = false;
let sending = false;
let pause = 1000;
let timer: ReturnType<typeof setTimeout> | undefined;
let shown: Outbox | undefined;

function readAll<T>(start: string): T[] {
  const keys = Object.keys(localStorage)
    .filter((k) => k.startsWith(start))
    .sort();
  return keys.flatMap((k) => {
    const raw = localStorage.getItem(k);
    return raw === null ? [] : [JSON.parse(raw) as T];
  });
}

function changed(): void {
  shown = undefined;
  for (const l of listeners) l();
}

/** The outbox as it stands; the same object until something changes. */
export function outbox(): Outbox {
  shown ??= {
    waiting: [...readAll<Entry>(prefix), ...unstored.values()],
    refused: readAll(refusedPrefix),
    full: unstored.size > 0,
    offline,
  };
  return shown;
}

export function watchOutbox(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Puts entries into the outbox and sends them as soon as that can be done. */
export function put(entries: readonly Entry[]): void {
  for (const e of entries) {
    try {
      localStorage.setItem(prefix + e.id, JSON.stringify(e));
    } catch {
      unstored.set(e.id, e);
    }
  }
  changed();
  void send();
}

function drop(id: string): void {
  localStorage.removeItem(prefix + id);
  unstored.delete(id);
}

function refuse(entry: Entry, problem: Problem): void {
  localStorage.setItem(refusedPrefix + entry.id, JSON.stringify({ entry, problem }));
  drop(entry.id);
}

/** Forgets an entry that was refused, when the person has read why. */
export function forgetRefused(id: string): void {
  localStorage.removeItem(refusedPrefix + id);
  changed();
}

function later(): void {
  clearTimeout(timer);
  timer = setTimeout(() => void send(), pause);
  pause = Math.min(pause * 2, 30_000);
}

const taken: Problem = {
  code: 'id-taken',
  says: 'Something else is kept under the same mark already.',
  remedy: 'Write it once more, so that it gets a mark of its own.',
};

async function sendSome(entries: readonly Entry[]): Promise<'went' | 'offline'> {
  const reply = await tell<AppendReply>('/api/entries', { entries });
  if (reply.ok) {
    const byId = new Map(entries.map((e) => [e.id, e]));
    for (const a of reply.value.appended) {
      const entry = byId.get(a.id);
      if (a.is === 'refused' && entry) refuse(entry, taken);
      else drop(a.id);
    }
    return 'went';
  }
  if (reply.offline || reply.problem.code.startsWith('status-5')) return 'offline';
  if (entries.length === 1 && entries[0]) {
    refuse(entries[0], reply.problem);
    return 'went';
  }
  // One bad entry must not hold up the rest: find it by sending each alone.
  for (const e of entries) if ((await sendSome([e])) === 'offline') return 'offline';
  return 'went';
}

/** Sends what waits, oldest first. Safe to call at any time: an entry sent twice is kept once. */
export async function send(): Promise<void> {
  if (sending) return;
  sending = true;
  try {
    for (let waiting = outbox().waiting; waiting.length > 0; waiting = outbox().waiting) {
      const went = await sendSome(waiting.slice(0, batch));
      offline = went === 'offline';
      changed();
      if (offline) {
        later();
        return;
      }
      pause = 1000;
    }
  } finally {
    sending = false;
  }
}
