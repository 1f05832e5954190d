// Why: the recording itself. There is one element for it, so that it plays on while sheets change; whoever shows it gives it a place.
import { useLayoutEffect, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { usePlayer } from './player.tsx';

/** Moves an element without ending what plays in it, where the browser can; elsewhere it plays on from where it stopped. */
function move(host: HTMLElement, to: HTMLElement): void {
  const media = host.querySelector('video');
  const playing = media !== null && !media.paused;
  to.append(host);
  if (playing) media.play().catch(() => undefined);
}

/** The home of the recording while nobody shows it: heard, not seen. */
export function Screen() {
  const { address, element, recording, playing, play, pause, host } = usePlayer();
  const home = useRef<HTMLDivElement>(null);
  const [hasPicture, setHasPicture] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the home is there only once there is a recording
  useLayoutEffect(() => {
    if (home.current && !host.isConnected) home.current.append(host);
  }, [host, address]);
  if (!address || !recording) return null;
  return (
    <>
      <div ref={home} id="screen-home" hidden />
      {createPortal(
        // biome-ignore lint/a11y/useMediaCaption: the words of the recording stand beside it, each with its second
        <video
          ref={element}
          src={address}
          preload="metadata"
          playsInline
          onLoadedMetadata={(e) => setHasPicture(e.currentTarget.videoWidth > 0)}
          onClick={() => (playing ? pause() : play())}
          className={hasPicture ? 'shown' : 'away'}
        />,
        host,
      )}
    </>
  );
}

/** Where the recording is watched. */
export function ScreenPlace() {
  const { host } = usePlayer();
  const ref = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const place = ref.current;
    if (!place) return;
    move(host, place);
    return () => {
      const home = document.getElementById('screen-home');
      if (home) move(host, home);
    };
  }, [host]);
  return <div ref={ref} className="screen-place" />;
}
