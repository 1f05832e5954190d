// Why: a drawing whose letters must stay readable is drawn for the width it really has.
import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The element's width in CSS pixels, kept up to date. */
export function useWidth<E extends Element>(first: number): readonly [RefObject<E | null>, number] {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(first);
  useLayoutEffect(() => {
    const el = ref.current;
    if (!el) return;
    const measure = () => setWidth(Math.max(120, Math.round(el.getBoundingClientRect().width)));
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(el);
    return () => watch.disconnect();
  }, []);
  return [ref, width];
}
