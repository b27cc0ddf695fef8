import { insetPolygons } from '../../geometry/offset.ts';
import type { Polygon } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { count, length, text } from '../quantity.ts';
import type { MeshResult } from '../result.ts';
import type { Searched } from '../searched.ts';
import { leastCount, type MeshNeed, meshNeed } from './bound.ts';
import { firstMesh } from './firstMesh.ts';
import { kindsOf } from './layout.ts';
import { type MeshPlan, type MeshProblem, type MeshSupply, meshKey } from './plan.ts';
import { meshProblem } from './problem.ts';
import { MOST_PIECES, meshWeight } from './rules.ts';
import { wireUsed } from './styles.ts';
import { tiesOf } from './ties.ts';
import { rowDirections } from './ways.ts';

/**
 * Mesh, counted by laying it: the pour inset by the cover, in rows of sheets or off the roll, pieces cut from what is on
 * the truck and from one kind that the yard sells. The layout is the one that the search found for this very problem, or a
 * good one made at once.
 * @param polygons The pour as polygons, arcs flattened.
 */
export function mesh(
  { practices, meshStock }: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
): Figured<MeshResult> {
  const { mesh: rule, tieSpacing } = practices.steel;
  const { cover, lapEnds, lapSides, leastPiece } = rule;
  if (!(cover >= 0 && lapEnds >= 0 && lapSides >= 0 && leastPiece > 0 && tieSpacing > 0)) {
    return withheld(tradeNote('steel', 'stop', 'mesh-size'));
  }
  const listed = meshStock.truck.length + meshStock.yard.length;
  if (listed === 0) return withheld(tradeNote('steel', 'stop', 'mesh-none-listed'));
  const inset = insetPolygons(polygons, cover);
  if (inset.length === 0) {
    return withheld(
      tradeNote('steel', 'stop', 'mesh-no-room', { facts: { cover: length(cover) } }),
    );
  }
  const ways = rowDirections(pour, closeness);
  const problem = meshProblem(rule, meshStock, inset, ways, closeness);
  const lap = { lap: length(Math.max(lapEnds, lapSides)) };
  if (problem.supply.length === 0) {
    return withheld(tradeNote('steel', 'stop', 'mesh-lap-too-wide', { facts: lap }));
  }
  const need = meshNeed(problem);
  if (problem.supply.some((one) => takesTooMany(problem, need, one))) {
    const facts = { ...lap, most: count(MOST_PIECES, 'piece') };
    return withheld(tradeNote('steel', 'stop', 'mesh-too-many', { facts }));
  }
  const key = meshKey(problem);
  const plan = searched.mesh?.key === key ? searched.mesh.plan : firstMesh(problem, need);
  if (!plan) return withheld(tradeNote('steel', 'stop', 'mesh-not-enough'));
  const wire = wireUsed(rule);
  const bought = plan.used.filter(({ from }) => from === 'yard');
  const figured: MeshResult = {
    problem,
    key,
    plan,
    need,
    least: leastOf(problem, need, plan),
    wire,
    weight: meshWeight(
      bought.reduce((sum, one) => sum + one.length * one.width, 0),
      wire.weight,
    ),
    ...tiesOf(plan, tieSpacing),
  };
  return { figured, notes: meshNotes(figured, listed, practices.steel.mesh.cover) };
}

function meshNotes(
  { problem, plan, wire }: MeshResult,
  listed: number,
  cover: Grid,
): readonly Note[] {
  const { lapEnds, lapSides, leastPiece, supply } = problem;
  const notes = [tradeNote('steel', 'caution', 'mesh-springs-back')];
  if (supply.length < listed) {
    const facts = { rows: count(listed - supply.length, 'row') };
    notes.push(tradeNote('steel', 'caution', 'mesh-stock-narrow', { facts }));
  }
  if (plan.pieces.length > 1 && Math.min(lapEnds, lapSides) < wire.square) {
    const facts = { square: length(wire.square) };
    notes.push(tradeNote('steel', 'caution', 'mesh-lap-short', { facts }));
  }
  notes.push(
    tradeNote('steel', 'assumption', 'mesh-laid-in-rows', {
      facts: { cover: length(cover), least: length(leastPiece) },
    }),
    tradeNote('steel', 'assumption', 'mesh-lap-used', {
      facts: { sides: length(lapSides), ends: length(lapEnds) },
    }),
  );
  if (problem.pricedBy === 'area') {
    notes.push(
      tradeNote('steel', 'assumption', 'mesh-price-missing', {
        facts: { kinds: text(`${kindsOf(problem).length}`) },
      }),
    );
  }
  return notes;
}

/** Of the kind that the plan buys, or would buy, how many no layout does without. */
function leastOf(problem: MeshProblem, need: MeshNeed, plan: MeshPlan): MeshResult['least'] {
  const bought = plan.used.find(({ from }) => from === 'yard');
  const kind = problem.supply.find(({ id, from }) => from === 'yard' && id === bought?.id);
  return kind ? { kind, count: leastCount(problem, need, kind) } : undefined;
}

/** Whether laying mesh of one kind takes more pieces than any slab does: a lap or a size typed wrong. */
function takesTooMany(
  { polygons, lapEnds, lapSides }: MeshProblem,
  { area }: MeshNeed,
  { length: long, width }: MeshSupply,
): boolean {
  const [adds, along] = [width - lapSides, long - lapEnds];
  const reach = polygons.flatMap(({ outer }) => outer);
  const [x, y] = [reach.map((one) => one.x), reach.map((one) => one.y)];
  const across = Math.max(span(x), span(y));
  const rows = across / Math.min(adds, along, width - lapEnds, long - lapSides);
  return area / (adds * along) > MOST_PIECES || rows > MOST_PIECES / 10;
}

function span(values: readonly number[]): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return most - least;
}
