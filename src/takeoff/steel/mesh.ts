import { doubledArea } from '../../geometry/area.ts';
import { boxOf } from '../../geometry/box.ts';
import { insetPolygons } from '../../geometry/offset.ts';
import type { Polygon } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { count, length } from '../quantity.ts';
import type { MeshPiece, SteelResult } from '../result.ts';
import { type CutPlan, cutStrips } from './cutting.ts';
import { longestWay } from './longestWay.ts';
import { LEAST_OFFCUT, MOST_PIECES, meshWeight } from './rules.ts';
import { directionOf, type Strip, stripsAlong } from './strips.ts';
import { wireUsed } from './styles.ts';

/**
 * Mesh sheets, counted by laying them: the pour inset by the cover, in rows along its longest side or across it, begun at
 * either edge, whichever of the four takes the fewest sheets. Quick enough for every frame of a drag; it doesn't search for
 * the best start in between.
 * @param polygons The pour as polygons, arcs flattened.
 */
export function mesh(
  { practices, meshStock }: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
): Figured<SteelResult> {
  const { lapEnds, lapSides, cover } = practices.steel.mesh;
  const lap = Math.max(lapEnds, lapSides);
  const [sheet] = meshStock.yard;
  if (practices.steel.kind !== 'mesh' || !sheet) return withheld();
  const { length: sheetLength, width: sheetWidth } = sheet;
  const { weight } = wireUsed(practices.steel.mesh);
  if (
    !(
      sheetLength > 0 &&
      sheetWidth > 0 &&
      lapEnds >= 0 &&
      lapSides >= 0 &&
      cover >= 0 &&
      weight > 0
    )
  ) {
    return withheld(tradeNote('steel', 'stop', 'mesh-size'));
  }
  const facts = { lap: length(lap), width: length(sheetWidth), length: length(sheetLength) };
  if (lap >= sheetWidth || lap >= sheetLength) {
    return withheld(tradeNote('steel', 'stop', 'mesh-lap-too-wide', { facts }));
  }
  const inset = insetPolygons(polygons, cover);
  const insetArea = inset.reduce((sum, polygon) => sum + areaOf(polygon), 0);
  if (insetArea <= 0) {
    return withheld(
      tradeNote('steel', 'stop', 'mesh-no-room', { facts: { cover: length(cover) } }),
    );
  }
  const least = leastPieces(inset, insetArea, sheetWidth - lap, sheetLength - lap);
  if (least > MOST_PIECES) {
    return withheld(
      tradeNote('steel', 'stop', 'mesh-too-many', {
        facts: { ...facts, most: count(MOST_PIECES, 'sheet') },
      }),
    );
  }
  const along = longestWay(pour, closeness);
  const lay = (angle: number) => {
    const strips = stripsAlong(inset, angle, sheetWidth, lap, closeness);
    return { angle, strips, plan: cutStrips(strips, sheetLength, lap, closeness) };
  };
  // Along the longest side and across it, and from either side: a layout started at the far side is the same one turned.
  const { angle, strips, plan } = [0, 1, 2, 3]
    .map((quarter) => lay(along + (quarter * Math.PI) / 2))
    .reduce((best, other) => (takesFewer(other.plan, best.plan) ? other : best));
  const sheetArea = sheetLength * sheetWidth;
  return {
    figured: {
      pieces: plan.pieces.map((piece) => meshPiece(piece, angle)),
      sheets: plan.sheets,
      rows: rowsIn(strips),
      // A sheet may be short by closeness each way, so it may be that much larger here: the bound must hold.
      leastByArea: Math.ceil(insetArea / ((sheetLength + closeness) * (sheetWidth + closeness))),
      insetArea,
      sheet: { length: sheetLength, width: sheetWidth, lap },
      weight: meshWeight(plan.sheets * sheetArea, weight),
    },
    notes: [
      tradeNote('steel', 'caution', 'mesh-springs-back'),
      tradeNote('steel', 'assumption', 'mesh-laid-in-rows', {
        facts: { offcut: length(LEAST_OFFCUT), cover: length(cover) },
      }),
      tradeNote('steel', 'assumption', 'mesh-lap-used', { facts }),
    ],
  };
}

function takesFewer(a: CutPlan, b: CutPlan): boolean {
  return a.sheets === b.sheets ? a.pieces.length < b.pieces.length : a.sheets < b.sheets;
}

function areaOf({ outer, holes }: Polygon): number {
  return holes.reduce((sum, hole) => sum - Math.abs(doubledArea(hole)), doubledArea(outer)) / 2;
}

/** No layout has fewer pieces than this: by area, and by rows across the longer side of the box. */
function leastPieces(
  inset: readonly Polygon[],
  insetArea: number,
  width: number,
  along: number,
): number {
  const { minX, minY, maxX, maxY } = boxOf(inset.flatMap(({ outer }) => outer));
  const across = Math.max(maxX - minX, maxY - minY);
  return Math.max(insetArea / (width * along), across / Math.max(width, 1));
}

function rowsIn(strips: readonly Strip[]): number {
  return new Set(strips.map(({ row }) => row)).size;
}

function meshPiece(
  { strip, offset, length: long, sheet }: CutPlan['pieces'][number],
  angle: number,
): MeshPiece {
  const [cos, sin] = directionOf(angle);
  const u = strip.from + offset;
  return {
    row: strip.row,
    corner: {
      x: toGrid(u * cos - strip.bottom * sin),
      y: toGrid(u * sin + strip.bottom * cos),
    },
    angle,
    length: toGrid(long),
    width: toGrid(strip.width),
    sheet,
  };
}
