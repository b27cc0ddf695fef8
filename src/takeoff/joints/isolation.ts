import type { Practices } from '../../job/job.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { length } from '../quantity.ts';
import type { IsolationRun, JointsResult } from '../result.ts';
import { getsStrip } from './rules.ts';

/**
 * Isolation strip along the edges that the practices choose: lengths by what they meet (one length goes on round a
 * corner while it stays against the same thing), grid units, whole; and pieces to buy, whose ends may be butted anywhere.
 */
export function isolation(practices: Practices, pour: NetPour): Figured<JointsResult> {
  const { pieceLength } = practices.isolation;
  if (!(pieceLength > 0)) return withheld(tradeNote('joints', 'stop', 'strip-piece-zero'));
  const runs = pour.pieces.flatMap(({ rings }) =>
    rings.flatMap(({ edges }) => stripRuns(edges, practices)),
  );
  const total = runs.reduce((sum, run) => sum + run.length, 0);
  // Both are whole grid units, so a total that comes out even takes no piece more.
  const pieces = Math.ceil(total / pieceLength);
  const notes =
    runs.length === 0
      ? [tradeNote('joints', 'assumption', 'strip-none')]
      : [
          tradeNote('joints', 'assumption', 'strip-edges'),
          tradeNote('joints', 'assumption', 'strip-butted', {
            facts: { piece: length(pieceLength) },
          }),
        ];
  return { figured: { isolation: runs, total, pieces }, notes };
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
    .filter((group) => getsStrip(group[0]!.kind, practices))
    .map((group) => ({
      kind: group[0]!.kind,
      edges: group,
      length: group.reduce((sum, edge) => sum + edge.length, 0),
    }));
}

function sameThing(a: PourEdge, b: PourEdge): boolean {
  return a.kind === b.kind && a.feature === b.feature;
}
