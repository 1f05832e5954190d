// Why: while words are read against what was heard, the recording is at hand beside them: played, gone back, and at a quicker pace.
import { minutes as clock } from '../../words/minutes.ts';
import { usePlayer } from './player.tsx';
import { ScreenPlace } from './screen.tsx';

const paces = [1, 1.25, 1.5, 2] as const;

export function PlayerPanel() {
  const { recording, playing, play, pause, goTo, second, pace, setPace, trouble } = usePlayer();
  if (!recording)
    return (
      <p className="player-panel small soft">No recording came with this walk. Its words are all here.</p>
    );
  return (
    <section className="player-panel" aria-label="The recording">
      <ScreenPlace />
      <div className="player-line">
        <button type="button" className="chief" onClick={() => (playing ? pause() : play(second))}>
          <span aria-hidden="true">{playing ? '❚❚' : '▶'}</span>
          <span className="unseen">{playing ? 'Pause at' : 'Play from'}</span>
          <span className="num">{clock(second)}</span>
        </button>
        <button type="button" onClick={() => goTo(Math.max(0, second - 5))}>
          <span aria-hidden="true">−5 s</span>
          <span className="unseen">Back five seconds</span>
        </button>
        <div className="choices quiet" role="radiogroup" aria-label="Pace">
          {paces.map((p) => (
            <label key={p}>
              <input type="radio" name="pace" checked={pace === p} onChange={() => setPace(p)} />
              <span className="num">{p}×</span>
            </label>
          ))}
        </div>
      </div>
      {trouble && <p className="small">{trouble}</p>}
    </section>
  );
}
