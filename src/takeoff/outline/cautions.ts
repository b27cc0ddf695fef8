import type { Note } from '../figure.ts';
import { type Layout, LEAST_TOLERANCE, meet } from './layout.ts';
import { area, count, length, outlineNote } from './notes.ts';
import type { NetPour, PourEdge } from './pour.ts';
import { chainCrossings, chainsTouch, overlapPlaces, placesInside } from './relations.ts';

/** What to look at before building on a pour that could be figured. */
export function cautionsOf(layout: Layout, pour: NetPour): Note[] {
  const notes: Note[] = [];
  const { members } = layout;
  if (pour.pieces.length > 1) {
    const at = pour.pieces.map(({ rings }) => rings[0]!.edges[0]!.from);
    notes.push(
      outlineNote('separate-pieces', 'caution', {
        at,
        facts: { pieces: count(pour.pieces.length, 'piece') },
      }),
    );
  }
  for (let a = 0; a < members.length; a++) {
    const { part, feature, chain } = members[a]!;
    if (part === 'pad') {
      for (let b = a + 1; b < members.length; b++) {
        const other = members[b]!;
        if (other.part !== 'pad') continue;
        const at = overlapPlaces(chain, other.chain, layout.tolerance);
        if (at.length === 0) continue;
        const features = [feature.id, other.feature.id];
        notes.push(outlineNote('pads-overlap', 'caution', { features, at }));
      }
    } else if (part === 'patch') {
      const touches = members.some(
        (other, b) =>
          b !== a &&
          (other.part === 'pad' || other.part === 'existing') &&
          chainsTouch(chain, other.chain),
      );
      if (!touches) {
        notes.push(
          outlineNote('patch-apart', 'caution', {
            features: [feature.id],
            at: chain.points.slice(0, 1),
          }),
        );
      }
    } else if (part === 'line') {
      notes.push(...lineNotes(layout, a));
    }
  }
  notes.push(...engineNotes(pour), ...weldNotes(layout));
  if (pour.slivers.length > 0) {
    notes.push(
      outlineNote('slivers-dissolved', 'assumption', {
        at: pour.slivers.map(({ at }) => at),
        facts: {
          slivers: count(pour.slivers.length, 'sliver'),
          area: area(pour.slivers.reduce((sum, sliver) => sum + sliver.area, 0)),
        },
      }),
    );
  }
  return notes;
}

/** An open wall line cuts nothing, so one that runs through a pad is likely a mistake. */
function lineNotes(layout: Layout, a: number): Note[] {
  const { members, tolerance } = layout;
  const line = members[a]!;
  return members.flatMap((pad, b) => {
    if (pad.part !== 'pad' || pad.chain.points.length < 3) return [];
    if (!meet(layout, a, b) && placesInside(line.chain, pad.chain, tolerance).length === 0)
      return [];
    const at = [
      ...placesInside(line.chain, pad.chain, tolerance),
      ...chainCrossings(line.chain, pad.chain),
    ];
    if (placesInside(line.chain, pad.chain, tolerance).length === 0) {
      const clear = at.filter((p) =>
        line.chain.points.every((q) => Math.hypot(p.x - q.x, p.y - q.y) > tolerance),
      );
      if (clear.length === 0) return [];
    }
    const features = [line.feature.id, pad.feature.id];
    return [outlineNote('building-line-crosses-pad', 'caution', { features, at })];
  });
}

function engineNotes({ clip }: NetPour): Note[] {
  if (clip.engine === 'clipper2') return [outlineNote('second-engine', 'caution')];
  return clip.retries > 0 ? [outlineNote('clip-retried', 'caution')] : [];
}

/** 'Close enough' is an assumption as soon as it moved a line by more than rounding does. */
function weldNotes({ members, welded, tolerance }: Layout): Note[] {
  const moves = welded.moves.filter(({ distance }) => distance > LEAST_TOLERANCE);
  if (moves.length === 0) return [];
  const touched = new Set(moves.flatMap(({ chain, onto }) => [chain, onto]));
  return [
    outlineNote('close-enough', 'assumption', {
      features: [...touched].sort((a, b) => a - b).map((k) => members[k]!.feature.id),
      at: moves.map(({ at }) => at),
      facts: {
        closeEnough: length(tolerance),
        farthest: length(Math.ceil(Math.max(...moves.map(({ distance }) => distance)))),
      },
    }),
  ];
}

/** Block-outs that take nothing from the pour, since no edge of it is theirs. */
export function idleBlockOuts(
  blockOuts: readonly string[],
  edges: readonly PourEdge[],
): readonly string[] {
  const met = new Set(edges.map(({ feature }) => feature));
  return blockOuts.filter((id) => !met.has(id));
}
