/** Colours of the materials, read from the style sheet, so that sun and evening are told in one place. */
const COLOURS = [
  'paper',
  'ink',
  'ink-soft',
  'rule',
  'fresh',
  'old',
  'lumber',
  'steel',
  'chalk',
  'soil',
  'caution',
  'stop',
  'focus',
  'tolerance',
  'electric',
  'gas',
  'communication',
  'water',
  'reclaimed-water',
  'sewer',
] as const;

export type Colour = (typeof COLOURS)[number];
export type Palette = Readonly<Record<Colour, string>>;

export function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  const entries = COLOURS.map((name) => [name, style.getPropertyValue(`--${name}`).trim()]);
  return Object.fromEntries(entries) as Record<Colour, string>;
}
