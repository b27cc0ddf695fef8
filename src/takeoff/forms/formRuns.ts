import { distanceToEdge } from '../../geometry/locate.ts';
import type { Grid } from '../../units/grid.ts';
import { type Figured, tradeNote } from '../notes.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import type { FormRun, FormsResult } from '../result.ts';

type FormedKind = FormRun['kind'];

/**
 * Form runs: the straight or curved lengths between corners along edges that need a form, in order round each ring.
 * Lengths are of the inside face, the face that the concrete touches: grid units, whole.
 *
 * Edges of one kind that follow each other join into one run where the way goes straight on (no joint leaves the line by
 * more than `closeness`), or round the same circle. An arc is a run of its own where it leaves a straight.
 * @param closeness Two places nearer than this are one: the practices' 'close enough'.
 */
export function formRuns(pour: NetPour, closeness: Grid): Figured<FormsResult> {
  const runs: FormRun[] = [];
  let corners = 0;
  pour.pieces.forEach((piece, at) => {
    piece.rings.forEach((ring, ringAt) => {
      const chains = joined(ring.edges, closeness);
      chains.forEach((edges, i) => {
        const kind = formedKind(edges[0]!);
        if (kind === null) return;
        runs.push({
          mark: `R${runs.length + 1}`,
          kind,
          edges,
          length: edges.reduce((sum, edge) => sum + edge.length, 0),
          curved: edges[0]!.arc !== undefined,
          piece: at,
          ring: ringAt,
        });
        // A run that closes on itself has no end to be nailed to another.
        const next = chains[(i + 1) % chains.length]!;
        if (chains.length > 1 && formedKind(next[0]!) !== null) corners++;
      });
    });
  });
  const total = runs.reduce((sum, run) => sum + run.length, 0);
  const notes = runs.length > 0 ? [tradeNote('forms', 'assumption', 'forms-inside-face')] : [];
  return { figured: { runs, total, corners }, notes };
}

function formedKind({ kind }: PourEdge): FormedKind | null {
  return kind === 'free' || kind === 'wall-formed' ? kind : null;
}

/** The edges of a ring gathered into runs, the first of which starts at or after the ring's first edge. */
function joined(edges: readonly PourEdge[], closeness: Grid): PourEdge[][] {
  const runs: PourEdge[][] = [];
  for (const edge of edges) {
    const last = runs.at(-1);
    if (last && goesOn(last, edge, closeness)) last.push(edge);
    else runs.push([edge]);
  }
  // The ring may have been opened in the middle of a run.
  const [first, last] = [runs[0], runs.at(-1)];
  if (first && last && first !== last && goesOn(last, first[0]!, closeness, first)) {
    last.push(...first);
    runs.shift();
  }
  return runs;
}

/** Whether `edge` (and what is joined to it) carries a run straight on, or on round its circle. */
function goesOn(
  run: readonly PourEdge[],
  edge: PourEdge,
  closeness: Grid,
  rest: readonly PourEdge[] = [edge],
): boolean {
  const last = run.at(-1)!;
  if (last.kind !== edge.kind) return false;
  if (last.arc || edge.arc) {
    if (!last.arc || !edge.arc) return false;
    return (
      last.arc.sweep > 0 === edge.arc.sweep > 0 &&
      Math.abs(last.arc.cx - edge.arc.cx) <= closeness &&
      Math.abs(last.arc.cy - edge.arc.cy) <= closeness &&
      Math.abs(last.arc.radius - edge.arc.radius) <= closeness
    );
  }
  const from = run[0]!.from;
  const { to } = rest.at(-1)!;
  // A way that doubles back leaves its joint off the line between its ends as well.
  const joints = [...run.map((one) => one.to), ...rest.slice(0, -1).map((one) => one.to)];
  return joints.every((joint) => distanceToEdge(joint, from, to) <= closeness);
}
