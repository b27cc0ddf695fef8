import type { Point } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Grid } from '../../units/grid.ts';
import type { Layer, LineStyle, Material, Path } from '../marks.ts';
import { polyline } from '../paths.ts';
import type { DrawingWords } from '../words/en.ts';

/** The kinds of section that a slab can have, in the order that they are drawn. */
export const SECTION_KINDS = [
  'free',
  'thickened',
  'existing-slab',
  'wall',
  'wall-formed',
  'steps',
  'block-out',
  'control-joint',
] as const;
export type SectionKind = (typeof SECTION_KINDS)[number];

/** Breaks a text into lines of a width; heights and widths in mm. */
export type BreakLines = (text: string, height: number, width: number) => readonly string[];

/** Something that is pointed at, and what is said of it. */
export interface Flag {
  readonly at: Point;
  readonly text: string;
}

/** A size with its line to the left of the section, to the right of it, or below. `lane` 0 is nearest. */
export interface CutSize {
  readonly from: Point;
  readonly to: Point;
  readonly side: 'left' | 'right' | 'below';
  readonly lane: number;
}

export interface CutArea {
  readonly layer: Layer;
  readonly material: Material;
  readonly path: Path;
}

export interface CutLine {
  readonly layer: Layer;
  readonly style: LineStyle;
  readonly path: Path;
}

/**
 * A section by what is in it, true to size: x runs from the edge (0) into the pour, y up from the finish (0). Where its texts
 * and sizes stand is found when it is placed.
 */
export interface Cut {
  readonly kind: SectionKind;
  /** Lowest first. */
  readonly areas: readonly CutArea[];
  readonly lines: readonly CutLine[];
  /** Bars and wires seen end on. */
  readonly dots: readonly Point[];
  readonly flags: readonly Flag[];
  readonly sizes: readonly CutSize[];
}

/** What sections are drawn from. */
export interface CutFrom {
  readonly job: Job;
  readonly takeoff: Takeoff;
  readonly words: DrawingWords;
  /** How far the section shows to the left of the edge and to its right. */
  readonly left: Grid;
  readonly right: Grid;
}

/** Cuts put on top of each other. */
export function joinedCuts(kind: SectionKind, parts: readonly Partial<Cut>[]): Cut {
  return {
    kind,
    areas: parts.flatMap(({ areas }) => areas ?? []),
    lines: parts.flatMap(({ lines }) => lines ?? []),
    dots: parts.flatMap(({ dots }) => dots ?? []),
    flags: parts.flatMap(({ flags }) => flags ?? []),
    sizes: parts.flatMap(({ sizes }) => sizes ?? []),
  };
}

export function area(layer: Layer, material: Material, points: readonly Point[]): CutArea {
  return { layer, material, path: polyline(points, true) };
}

export function line(layer: Layer, style: LineStyle, points: readonly Point[]): CutLine {
  return { layer, style, path: polyline(points) };
}

export function box(left: Grid, right: Grid, bottom: Grid, top: Grid): readonly Point[] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

/** A thin line with a zigzag: what is drawn goes on past it (ISO 128). */
export function breakLine(x: Grid, bottom: Grid, top: Grid): CutLine {
  const [middle, high] = [(bottom + top) / 2, top - bottom];
  const step = Math.min(high / 6, 3000);
  const past = Math.min(high / 8, 3000);
  return line('pour', 'hairline', [
    { x, y: top + past },
    { x, y: middle + step },
    { x: x - step, y: middle + step / 3 },
    { x: x + step, y: middle - step / 3 },
    { x, y: middle - step },
    { x, y: bottom - past },
  ]);
}
