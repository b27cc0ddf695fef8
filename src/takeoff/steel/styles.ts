import type { MeshStyle, Practices } from '../../job/job.ts';
import { type Grid, INCH, POUND_KG, SQUARE_FOOT, SQUARE_METRE } from '../../units/grid.ts';

/** Welded wire of one kind, the same both ways. */
export interface Wire {
  /** One square: how far apart the wires are. */
  readonly square: Grid;
  /** Diameter of a wire. */
  readonly diameter: Grid;
  /** Steel each way: mm² in a metre's width. */
  readonly area: number;
  /** kg per square metre. */
  readonly weight: number;
}

interface Style {
  /** Squares, inches. */
  readonly square: number;
  /** Area of one wire, hundredths of a square inch: the number of its designation. */
  readonly wire: number;
  /** Pounds per 100 ft². */
  readonly pounds: number;
}

/**
 * Styles commonly sold. What is called 8 gauge is W2.0 in the tables, 29 lb; the gauge itself (0.162 in) comes to W2.1,
 * 30 lb (from memory; 45 lb at 4 in, by the wire's own weight). Both stand here.
 * @source welded-wire-table-1975
 */
const STYLES: Readonly<Record<MeshStyle, Style>> = {
  '6x6-W1.4': { square: 6, wire: 1.4, pounds: 21 },
  '6x6-W2.0': { square: 6, wire: 2, pounds: 29 },
  '6x6-W2.1': { square: 6, wire: 2.1, pounds: 30 },
  '6x6-W2.9': { square: 6, wire: 2.9, pounds: 42 },
  '6x6-W4.0': { square: 6, wire: 4, pounds: 58 },
  '4x4-W1.4': { square: 4, wire: 1.4, pounds: 31 },
  '4x4-W2.0': { square: 4, wire: 2, pounds: 43 },
  '4x4-W2.1': { square: 4, wire: 2.1, pounds: 45 },
  '4x4-W2.9': { square: 4, wire: 2.9, pounds: 62 },
  '4x4-W4.0': { square: 4, wire: 4, pounds: 85 },
};

export const MESH_STYLES = Object.keys(STYLES) as readonly MeshStyle[];

/** Steel weighs 490 lb/ft³ (7,850 kg/m³). Common practice; it gives the published weights back to half a percent. */
export const STEEL_DENSITY = 7850;

const SQUARE_INCH_MM2 = 25.4 ** 2;
/** One square inch in a foot's width is so many mm² in a metre's. */
export const SQUARE_INCH_PER_FOOT = SQUARE_INCH_MM2 / 0.3048;

/** A style's wire: area each way = W ÷ 100 × 12 ÷ square, exactly; its weight as published. */
export function wireOf(style: MeshStyle): Wire {
  const { square, wire, pounds } = STYLES[style];
  return {
    square: square * INCH,
    diameter: diameterOf(wire / 100),
    area: ((wire / 100) * 12 * SQUARE_INCH_PER_FOOT) / square,
    weight: ((pounds * POUND_KG) / 100) * (SQUARE_METRE / SQUARE_FOOT),
  };
}

/** The wire that the practices choose. Of one's own, the area follows from its weight: half of it lies each way. */
export function wireUsed({ style, own }: Practices['steel']['mesh']): Wire {
  if (style !== 'own') return wireOf(style);
  const area = (own.weight / (2 * STEEL_DENSITY)) * 1e6;
  const one = ((area / SQUARE_INCH_PER_FOOT) * own.square) / (12 * INCH);
  return { ...own, area, diameter: diameterOf(one) };
}

/** @param squareInches area of one wire */
function diameterOf(squareInches: number): Grid {
  return Math.sqrt((4 * squareInches) / Math.PI) * INCH;
}
