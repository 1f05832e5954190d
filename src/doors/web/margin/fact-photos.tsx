// Why: a picture taken of that part at that place is evidence, also when no observation was made from it.
import { subjectTitle } from '../../words/say-value.ts';
import { useUnit } from '../unit/unit-context.ts';
import { Photo } from './photo.tsx';

export function FactPhotos({ part, place }: { part: string; place: string | undefined }) {
  const { packet } = useUnit();
  const photos = packet.record.media.filter(
    (m) =>
      m.role === 'photo' &&
      m.part === part &&
      (place === undefined || m.place === undefined || m.place === place),
  );
  if (photos.length === 0) return null;
  return (
    <div className="thumbs">
      {photos.slice(0, 3).map((m) => (
        <figure key={m.media}>
          <Photo media={m.media} says={m.caption ?? subjectTitle({ part, place: m.place })} />
          {m.caption && <figcaption className="small soft">{m.caption}</figcaption>}
        </figure>
      ))}
    </div>
  );
}
