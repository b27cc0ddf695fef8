import { type RefObject, useEffect, useState } from 'react';
import type { Size } from './view.ts';

/** An element's size in CSS pixels, kept up to date; null until it has one. */
export function useSize(element: RefObject<HTMLElement | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null);
  useEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const observer = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = watched;
      if (width === 0 || height === 0) return;
      setSize((before) =>
        before?.width === width && before.height === height ? before : { width, height },
      );
    });
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
