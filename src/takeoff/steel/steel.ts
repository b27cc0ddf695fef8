import type { Polygon } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { areaByLength, length } from '../quantity.ts';
import type { SteelResult } from '../result.ts';
import type { Searched } from '../searched.ts';
import { chairsUnder } from './chairs.ts';
import { dragArea, dragInputs } from './drag.ts';
import { mesh } from './mesh.ts';

/**
 * The steel of the kind that the practices choose, what holds it at its height, and what the subgrade-drag formula asks
 * for beside it. Not structural design.
 */
export function steel(
  job: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
): Figured<SteelResult> {
  const { practices } = job;
  const { kind, supports } = practices.steel;
  if (kind !== 'mesh') return withheld(tradeNote('steel', 'assumption', 'steel-none'));
  const laid = mesh(job, pour, polygons, closeness, searched);
  if (!laid.figured) return withheld(...laid.notes);
  const { problem, plan, wire } = laid.figured;
  const chairs =
    supports.by === 'chairs' && supports.spacing > 0
      ? chairsUnder(problem.polygons, plan, supports.spacing)
      : undefined;
  const drag = { inputs: dragInputs(practices), need: dragArea(dragInputs(practices)) };
  const figured: SteelResult = {
    mesh: laid.figured,
    ...(chairs ? { chairs } : {}),
    drag: { ...drag, has: wire.area },
  };
  return {
    figured,
    notes: [...laid.notes, ...supportNotes(job, chairs !== undefined), ...dragNotes(figured)],
  };
}

function supportNotes({ practices }: Job, chairs: boolean): readonly Note[] {
  const { by, spacing } = practices.steel.supports;
  if (by === 'lifting') return [tradeNote('steel', 'assumption', 'steel-lifted')];
  const facts = { spacing: length(spacing) };
  return chairs
    ? [tradeNote('steel', 'assumption', 'steel-on-chairs', { facts })]
    : [tradeNote('steel', 'stop', 'chairs-too-many', { facts })];
}

function dragNotes({ drag: { need, has } }: SteelResult): readonly Note[] {
  const facts = { need: areaByLength(need), has: areaByLength(has) };
  return [
    ...(has < need ? [tradeNote('steel', 'caution', 'drag-short', { facts })] : []),
    tradeNote('steel', 'assumption', 'steel-what-for', { facts }),
  ];
}
