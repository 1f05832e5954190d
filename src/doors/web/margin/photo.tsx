// Why: a picture as evidence, with the part of it that shows the thing ruled round.
import { useState } from 'react';
import { useUnit } from '../unit/unit-context.ts';

interface Props {
  readonly media: string;
  /** Left, top, width, height as fractions of the picture. */
  readonly region?: readonly [number, number, number, number] | undefined;
  readonly says: string;
}

export function Photo({ media, region, says }: Props) {
  const { unit } = useUnit();
  const [gone, setGone] = useState(false);
  const address = `/api/units/${unit}/media/${media}`;
  if (gone) return <p className="hint">The picture is not at hand on this device now.</p>;
  return (
    <a href={address} style={{ position: 'relative', display: 'block', margin: '8px 0' }}>
      <img className="photo" src={address} alt={says} loading="lazy" onError={() => setGone(true)} />
      {region && (
        <span
          aria-hidden="true"
          style={{
            position: 'absolute',
            border: '3px solid var(--blue)',
            left: `${region[0] * 100}%`,
            top: `${region[1] * 100}%`,
            width: `${region[2] * 100}%`,
            height: `${region[3] * 100}%`,
          }}
        />
      )}
    </a>
  );
}
