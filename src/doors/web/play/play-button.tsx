// Why: whatever was said can be heard again where it stands, or read at its second when there is no recording.
import { useLocation } from 'wouter';
import { minutes as clock } from '../../words/minutes.ts';
import { useUnit } from '../unit/unit-context.ts';
import { usePlayer } from './player.tsx';

export function PlayButton({ start, end }: { start: number; end: number }) {
  const { play, goTo, recording } = usePlayer();
  const { unit } = useUnit();
  const [, navigate] = useLocation();
  const span = end - start >= 1 ? `${clock(start)} – ${clock(end)}` : clock(start);
  if (recording) {
    return (
      <button type="button" onClick={() => play(start, end + 1.5)}>
        <span aria-hidden="true">▶</span>
        <span>
          Play <span className="num">{span}</span>
        </span>
      </button>
    );
  }
  return (
    <button
      type="button"
      onClick={() => {
        goTo(start);
        navigate(`/unit/${unit}/review?at=${start.toFixed(2)}`);
      }}
    >
      Read it at <span className="num">{span}</span>
    </button>
  );
}
