// Why: the recording itself. It is shown where it is watched, and only heard everywhere else.
import { usePlayer } from './player.tsx';

export function Screen({ shown }: { shown: boolean }) {
  const { address, element, recording } = usePlayer();
  if (!address || !recording) return null;
  const picture = recording.type.startsWith('video/');
  return (
    // biome-ignore lint/a11y/useMediaCaption: the words of the recording stand beside it, each with its second
    <video
      ref={element}
      src={address}
      preload="metadata"
      playsInline
      controls={picture && shown}
      className={picture && shown ? 'shown' : 'away'}
    />
  );
}
