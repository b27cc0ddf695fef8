import { type RefObject, useEffect, useState } from 'react';
import { type Palette, readPalette } from './paint/palette.ts';

/** The style sheet's colours, read again after the theme has been set on the page. */
export function usePalette(
  element: RefObject<HTMLElement | null>,
  theme: 'light' | 'dark',
): Palette | null {
  const [palette, setPalette] = useState<Palette | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the theme changes what the style sheet says.
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      if (element.current) setPalette(readPalette(element.current));
    });
    return () => cancelAnimationFrame(frame);
  }, [element, theme]);
  return palette;
}
