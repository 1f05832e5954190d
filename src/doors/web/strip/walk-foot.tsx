// Why: the walk along the foot of every sheet: play it, see where something was found, go to any second of it.
import { useLocation } from 'wouter';
import { minutes as clock } from '../../words/minutes.ts';
import { usePlayer } from '../play/player.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { WalkStrip } from './walk-strip.tsx';

export function WalkFoot() {
  const { unit, packet } = useUnit();
  const { recording, playing, play, pause, goTo, second, trouble } = usePlayer();
  const [, navigate] = useLocation();
  if (packet.chapters.length === 0) return null;
  const go = (to: number) => {
    if (recording) {
      play(to);
      return;
    }
    goTo(to);
    navigate(`/unit/${unit}/review?at=${Math.floor(to)}`);
  };
  return (
    <footer className="foot">
      {trouble && <p className="small">{trouble}</p>}
      <div className={recording ? 'play-line' : ''}>
        {recording && (
          <button type="button" onClick={() => (playing ? pause() : play(second))}>
            <span aria-hidden="true">{playing ? '❚❚' : '▶'}</span>
            <span>
              <span className="unseen">{playing ? 'Pause at' : 'Play from'}</span>{' '}
              <span className="num">{clock(second)}</span>
            </span>
          </button>
        )}
        <WalkStrip go={go} />
      </div>
    </footer>
  );
}
