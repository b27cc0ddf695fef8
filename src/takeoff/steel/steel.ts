import type { Point, Polygon } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { areaByLength, length, tapeLength } from '../quantity.ts';
import type { DowelsResult, SteelResult } from '../result.ts';
import type { Searched } from '../searched.ts';
import { barGrid } from './barGrid.ts';
import { chairsUnder, chairsUnderGrid } from './chairs.ts';
import { dowelSeams, dowelSize, dowelsMeeting } from './dowels.ts';
import { dragArea, dragInputs } from './drag.ts';
import { mesh } from './mesh.ts';

/**
 * The steel of the kind that the practices choose, what holds it at its height, what the subgrade-drag formula asks for
 * beside it, and dowels into the old slab. Not structural design.
 * @param jointEnds Where joints end at an edge: dowels are kept from them.
 */
export function steel(
  job: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
  jointEnds: readonly Point[] = [],
): Figured<SteelResult> {
  const { kind } = job.practices.steel;
  const laid: Figured<SteelResult> =
    kind === 'mesh'
      ? meshPart(job, pour, polygons, closeness, searched)
      : kind === 'bars'
        ? barsPart(job, pour, polygons, closeness, searched)
        : { notes: [tradeNote('steel', 'assumption', 'steel-none')] };
  const doweled = dowelsPart(job, pour, closeness, jointEnds);
  const notes = [...laid.notes, ...doweled.notes];
  if (!laid.figured && !doweled.figured) return { notes };
  const dowels = doweled.figured ? { dowels: doweled.figured } : {};
  return { figured: { ...laid.figured, ...dowels }, notes };
}

function meshPart(
  job: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
): Figured<SteelResult> {
  const { figured, notes } = mesh(job, pour, polygons, closeness, searched);
  if (!figured) return { notes };
  const { supports } = job.practices.steel;
  const chairs =
    supports.by === 'chairs' && supports.spacing > 0
      ? chairsUnder(figured.problem.polygons, figured.plan, supports.spacing)
      : undefined;
  const drag = dragOf(job, figured.wire.area);
  return {
    figured: { mesh: figured, ...(chairs ? { chairs } : {}), drag },
    notes: [...notes, ...supportNotes(job, chairs !== undefined), ...dragNotes(drag)],
  };
}

function barsPart(
  job: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
): Figured<SteelResult> {
  const { figured, notes } = barGrid(job, pour, polygons, closeness, searched);
  if (!figured) return { notes };
  const { supports } = job.practices.steel;
  const chairs =
    supports.by === 'chairs' && supports.spacing > 0
      ? chairsUnderGrid(figured.inset, figured.angle, supports.spacing)
      : undefined;
  const drag = dragOf(job, figured.area);
  return {
    figured: { bars: figured, ...(chairs ? { chairs } : {}), drag },
    notes: [...notes, ...supportNotes(job, chairs !== undefined), ...dragNotes(drag)],
  };
}

function dragOf({ practices }: Job, has: number): NonNullable<SteelResult['drag']> {
  const inputs = dragInputs(practices);
  return { inputs, need: dragArea(inputs), has };
}

function supportNotes({ practices }: Job, chairs: boolean): readonly Note[] {
  const { by, spacing } = practices.steel.supports;
  if (by === 'lifting') return [tradeNote('steel', 'assumption', 'steel-lifted')];
  const facts = { spacing: length(spacing) };
  return chairs
    ? [tradeNote('steel', 'assumption', 'steel-on-chairs', { facts })]
    : [tradeNote('steel', 'stop', 'chairs-too-many', { facts })];
}

function dragNotes({ need, has }: NonNullable<SteelResult['drag']>): readonly Note[] {
  const facts = { need: areaByLength(need), has: areaByLength(has) };
  return [
    ...(has < need ? [tradeNote('steel', 'caution', 'drag-short', { facts })] : []),
    tradeNote('steel', 'assumption', 'steel-what-for', { facts }),
  ];
}

/** More dowels than this are a spacing typed wrong. Our own limit. */
const MOST_DOWELS = 5_000;

function dowelsPart(
  { practices }: Job,
  pour: NetPour,
  closeness: Grid,
  jointEnds: readonly Point[],
): Figured<DowelsResult> {
  const { use, set, fromCorner } = practices.steel.dowels;
  const against = pour.lengthByKind['existing-slab'];
  if (against <= 0) return { notes: [] };
  if (!use) return { notes: [tradeNote('steel', 'assumption', 'dowels-off')] };
  const size = dowelSize(practices);
  const { spacing } = size;
  if (!(spacing > 0 && fromCorner >= 0) || against / spacing > MOST_DOWELS) {
    return { notes: [tradeNote('steel', 'stop', 'dowels-size')] };
  }
  const seams = dowelSeams(pour, { spacing, fromEnds: fromCorner, jointEnds, closeness });
  const meeting = dowelsMeeting(seams, size);
  return {
    figured: { size, seams },
    notes: [
      tradeNote('steel', 'caution', 'dowels-drill'),
      ...(meeting.length > 0
        ? [tradeNote('steel', 'caution', 'dowels-meet', { at: meeting })]
        : []),
      tradeNote('steel', 'assumption', set === 'epoxy' ? 'dowels-epoxy' : 'dowels-sleeve', {
        facts: { depth: tapeLength(size.length / 2, 16), fromCorner: length(fromCorner) },
      }),
    ],
  };
}
