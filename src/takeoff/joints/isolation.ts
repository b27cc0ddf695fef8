import type { Practices } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { length } from '../quantity.ts';
import type { IsolationRun, JointsResult } from '../result.ts';
import { getsStrip, isPatchInSlab } from './rules.ts';

type Strip = Pick<JointsResult, 'isolation' | 'total' | 'stripDepth' | 'pieces'>;

/**
 * Isolation strip along the edges that the practices choose: lengths by what they meet (one length goes on round a
 * corner while it stays against the same thing), grid units, whole; and pieces to buy, whose ends may be butted anywhere.
 * Its depth is the slab's, less what its top is kept low by.
 */
export function isolation(
  practices: Practices,
  pour: NetPour,
): { readonly figured: Strip; readonly notes: readonly Note[] } {
  const { thickness } = practices;
  const { pieceLength, recess } = practices.isolation;
  const runs = pour.pieces.flatMap(({ rings }) =>
    rings.flatMap(({ edges }) => stripRuns(edges, practices)),
  );
  const total = runs.reduce((sum, run) => sum + run.length, 0);
  const strip = { isolation: runs, total, stripDepth: Math.max(0, thickness - recess) };
  if (total > 0 && thickness > 0 && !(recess >= 0 && recess < thickness)) {
    // No strip at all: nothing of it is counted.
    const facts = { recess: length(recess), thickness: length(thickness) };
    return {
      figured: { isolation: [], total: 0, stripDepth: 0 },
      notes: [tradeNote('joints', 'stop', 'strip-too-low', { facts })],
    };
  }
  if (!(pieceLength > 0)) {
    return { figured: strip, notes: [tradeNote('joints', 'stop', 'strip-piece-zero')] };
  }
  const bonded = practices.isolation.existing && practices.isolation.bondAtPatch && hasPatch(pour);
  return {
    // Both are whole grid units, so a total that comes out even takes no piece more.
    figured: { ...strip, pieces: Math.ceil(total / pieceLength) },
    notes: [
      ...(runs.length === 0
        ? [tradeNote('joints', 'assumption', 'strip-none')]
        : [
            tradeNote('joints', 'assumption', 'strip-edges'),
            tradeNote('joints', 'assumption', 'strip-butted', {
              facts: { piece: length(pieceLength) },
            }),
          ]),
      ...(bonded ? [tradeNote('joints', 'assumption', 'strip-bonded')] : []),
    ],
  };
}

function hasPatch({ pieces }: NetPour): boolean {
  return pieces.some(({ rings }) =>
    rings.some(({ edges }) => edges.some((edge) => isPatchInSlab(edge))),
  );
}

function stripRuns(edges: readonly PourEdge[], practices: Practices): readonly IsolationRun[] {
  const groups: PourEdge[][] = [];
  for (const edge of edges) {
    const last = groups.at(-1);
    if (last && sameThing(last[0]!, edge)) last.push(edge);
    else groups.push([edge]);
  }
  const [first, last] = [groups[0], groups.at(-1)];
  // The ring may have been opened in the middle of a strip.
  if (first && last && first !== last && sameThing(first[0]!, last[0]!)) {
    last.push(...first);
    groups.shift();
  }
  return groups
    .filter((group) => getsStrip(group[0]!, practices))
    .map((group) => ({
      kind: group[0]!.kind,
      edges: group,
      length: group.reduce((sum, edge) => sum + edge.length, 0),
    }));
}

function sameThing(a: PourEdge, b: PourEdge): boolean {
  const oneBond = isPatchInSlab(a) === isPatchInSlab(b);
  return a.kind === b.kind && a.feature === b.feature && oneBond;
}
