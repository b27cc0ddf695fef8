import type { Practices } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { length, text } from '../quantity.ts';
import type { FormsResult } from '../result.ts';
import { DRESSED, formDepth } from './rules.ts';

/**
 * How the form board's own depth sits with the slab: a gap to close under it, ground to cut below it, or a board that
 * stands too high; and what isn't formed at all.
 */
export function formNotes(
  practices: Practices,
  pour: NetPour,
  forms: FormsResult,
): readonly Note[] {
  const { formBoard, gapUnderForm, thickness } = practices;
  const notes: Note[] = [];
  const { depth } = DRESSED[formBoard];
  const given = formDepth(formBoard, gapUnderForm);
  const facts = { board: text(formBoard), depth: length(depth), thickness: length(thickness) };
  if (forms.runs.length > 0) {
    if (gapUnderForm > 0) {
      notes.push(
        tradeNote('forms', 'caution', 'form-gap', { facts: { gap: length(gapUnderForm) } }),
      );
    }
    if (thickness > given && given > 0) {
      const cut = length(thickness - given);
      notes.push(tradeNote('forms', 'caution', 'form-cut', { facts: { ...facts, cut } }));
    }
    if (depth > thickness && thickness > 0) {
      const proud = length(depth - thickness);
      notes.push(tradeNote('forms', 'caution', 'form-proud', { facts: { ...facts, proud } }));
    }
    notes.push(...edgeNotes(practices, pour));
  }
  const { lengthByKind } = pour;
  const against = lengthByKind['existing-slab'] + lengthByKind.steps + lengthByKind.wall;
  if (against > 0) {
    notes.push(
      tradeNote('forms', 'assumption', 'form-none-against-old', {
        facts: { length: length(against) },
      }),
    );
  }
  return notes;
}

/** Whether the free edges go deeper than the board: in a trench, since the form gets no deeper. */
function edgeNotes(practices: Practices, { lengthByKind }: NetPour): readonly Note[] {
  const { formBoard, gapUnderForm, thickenedEdge } = practices;
  if (!thickenedEdge.use || lengthByKind.free === 0) {
    return [tradeNote('forms', 'assumption', 'edges-not-thickened')];
  }
  const below = thickenedEdge.depth - DRESSED[formBoard].depth;
  if (!(below > 0)) return [];
  const facts = {
    depth: length(thickenedEdge.depth),
    width: length(thickenedEdge.width),
    board: text(formBoard),
    below: length(below),
  };
  const note = tradeNote('forms', 'assumption', 'edges-thickened', { facts });
  // The gap under the form is open to the trench.
  const bank = tradeNote('forms', 'caution', 'trench-bank', {
    facts: { below: length(below), gap: length(gapUnderForm) },
  });
  return [note, bank];
}
