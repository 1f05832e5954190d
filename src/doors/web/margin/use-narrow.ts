// Why: on a phone the margin has no room beside the sheet and opens under the line instead.
import { useSyncExternalStore } from 'react';

const query = '(max-width: 860px)';

function watch(listener: () => void): () => void {
  const media = matchMedia(query);
  media.addEventListener('change', listener);
  return () => media.removeEventListener('change', listener);
}

export const useNarrow = (): boolean => useSyncExternalStore(watch, () => matchMedia(query).matches);
