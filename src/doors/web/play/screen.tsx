// Why: the recording itself. It is shown where it is watched, and only heard everywhere else.
import { useState } from 'react';
import { usePlayer } from './player.tsx';

export function Screen({ shown }: { shown: boolean }) {
  const { address, element, recording, playing, play, pause } = usePlayer();
  const [hasPicture, setHasPicture] = useState(false);
  if (!address || !recording) return null;
  const picture = hasPicture && shown;
  return (
    // biome-ignore lint/a11y/useMediaCaption: the words of the recording stand beside it, each with its second
    <video
      ref={element}
      src={address}
      preload="metadata"
      playsInline
      onLoadedMetadata={(e) => setHasPicture(e.currentTarget.videoWidth > 0)}
      onClick={() => (playing ? pause() : play())}
      className={picture ? 'shown' : 'away'}
    />
  );
}
