// Why: one recording plays at a time, and any sheet may ask for a second of it; without a recording the second is still chosen.
import {
  createContext,
  type ReactNode,
  type RefObject,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { EntryOf } from '../../../said/entry.ts';
import { useUnit } from '../unit/unit-context.ts';

export interface Player {
  /** The recording of the newest walk that has one. */
  readonly recording: EntryOf<'media'> | undefined;
  readonly address: string | undefined;
  readonly element: RefObject<HTMLVideoElement | null>;
  /** The second the walk stands at. */
  readonly second: number;
  readonly playing: boolean;
  /** What went wrong with playing, as a sentence. */
  readonly trouble: string | undefined;
  /** Goes to a second and plays, up to another when one is given. */
  readonly play: (from?: number, until?: number) => void;
  readonly pause: () => void;
  readonly goTo: (second: number) => void;
  /** How many times as quick as it was spoken. */
  readonly pace: number;
  readonly setPace: (pace: number) => void;
  /** Holds the element of the recording, wherever on the page it is shown. */
  readonly host: HTMLDivElement;
}

const Context = createContext<Player | undefined>(undefined);

export function usePlayer(): Player {
  const player = useContext(Context);
  if (!player) throw new Error('usePlayer: outside its provider');
  return player;
}

export function PlayerProvider({ children }: { children: ReactNode }) {
  const { unit, packet } = useUnit();
  const element = useRef<HTMLVideoElement>(null);
  const until = useRef<number | undefined>(undefined);
  const [second, setSecond] = useState(0);
  const [playing, setPlaying] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const [pace, setPaceTo] = useState(1);
  const [host] = useState(() => document.createElement('div'));
  const recording = packet.record.media.filter((m) => m.role === 'recording').at(-1);
  const address = recording && `/api/units/${unit}/media/${recording.media}`;

  const goTo = useCallback((to: number) => {
    setSecond(to);
    until.current = undefined;
    if (element.current) element.current.currentTime = to;
  }, []);
  const play = useCallback(
    (from?: number, to?: number) => {
      if (from !== undefined) goTo(from);
      until.current = to;
      setTrouble(undefined);
      element.current?.play().catch((e: unknown) => {
        if (e instanceof DOMException && e.name === 'AbortError') return;
        setTrouble('The recording could not be played on this device. Its words are still here.');
      });
    },
    [goTo],
  );
  const pause = useCallback(() => element.current?.pause(), []);
  const setPace = useCallback((to: number) => {
    setPaceTo(to);
    if (element.current) {
      element.current.defaultPlaybackRate = to;
      element.current.playbackRate = to;
    }
  }, []);

  // The address is what the element hangs on: another recording, another element to listen to.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    const el = element.current;
    if (!el) return;
    const moved = () => {
      setSecond(el.currentTime);
      if (until.current !== undefined && el.currentTime >= until.current) {
        until.current = undefined;
        el.pause();
      }
    };
    const began = () => setPlaying(true);
    const ended = () => setPlaying(false);
    el.addEventListener('timeupdate', moved);
    el.addEventListener('play', began);
    el.addEventListener('pause', ended);
    return () => {
      el.removeEventListener('timeupdate', moved);
      el.removeEventListener('play', began);
      el.removeEventListener('pause', ended);
    };
  }, [address]);

  const player = useMemo(
    () => ({
      recording,
      address,
      element,
      second,
      playing,
      trouble,
      play,
      pause,
      goTo,
      pace,
      setPace,
      host,
    }),
    [recording, address, second, playing, trouble, play, pause, goTo, pace, setPace, host],
  );
  return <Context value={player}>{children}</Context>;
}
