import type { Practices } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { formDepth, nominalDepth } from '../forms/rules.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { bagVolume, length, text } from '../quantity.ts';
import type { VolumeResult } from '../result.ts';
import { LEAST_PUBLISHED, UNSEEN_DEPTH } from './rules.ts';
import { thickenedEdge } from './thickenedEdge.ts';

/**
 * Net volume: area × thickness, and what the thickened edge takes below that, when there is one. Nothing else added,
 * nothing taken off. Cubic grid units. The thickness is a setting of its own; what the form board would give is told beside it, never put in its place.
 * @source farmers-bulletin-1279
 */
export function slabVolume(practices: Practices, pour: NetPour): Figured<VolumeResult> {
  const { thickness, formBoard, gapUnderForm } = practices;
  if (!(thickness > 0)) return withheld(tradeNote('mix', 'stop', 'thickness-zero'));
  const depth = formDepth(formBoard, gapUnderForm);
  if (!(depth > 0)) return withheld(tradeNote('mix', 'stop', 'form-depth-zero'));
  const { use, depth: edgeDepth, width } = practices.thickenedEdge;
  const edge = use && pour.lengthByKind.free > 0;
  if (edge && !(edgeDepth > thickness && width > 0)) {
    const facts = { depth: length(edgeDepth), thickness: length(thickness) };
    return withheld(tradeNote('mix', 'stop', 'thickened-not-deeper', { facts }));
  }
  const thickened = edge ? thickenedEdge(practices, pour) : undefined;
  const slab = pour.area * thickness;
  const net = slab + (thickened?.volume ?? 0);
  // The trench goes as deep from the finish down, whatever the form gives.
  const atFormDepth =
    pour.area * depth + (thickened ? Math.max(0, edgeDepth - depth) * thickened.meanArea : 0);
  const notes: Note[] = [
    thickened
      ? tradeNote('mix', 'assumption', 'thickened-used', {
          facts: {
            thickness: length(thickness),
            depth: length(edgeDepth),
            width: length(width),
            taper: length(thickened.taper),
          },
        })
      : tradeNote('mix', 'assumption', 'thickness-used', {
          facts: { thickness: length(thickness) },
        }),
    tradeNote('mix', 'assumption', 'flat-ground', {
      facts: { depth: length(UNSEEN_DEPTH), more: bagVolume(pour.area * UNSEEN_DEPTH) },
    }),
  ];
  if (thickness < LEAST_PUBLISHED) {
    const facts = { thickness: length(thickness), least: length(LEAST_PUBLISHED) };
    notes.push(tradeNote('mix', 'caution', 'slab-thin', { facts }));
  }
  if (depth !== thickness) {
    const facts = {
      thickness: length(thickness),
      depth: length(depth),
      difference: bagVolume(Math.abs(atFormDepth - net)),
      board: text(formBoard),
    };
    notes.push(
      tradeNote('mix', 'caution', depth > thickness ? 'form-deeper' : 'form-shallower', { facts }),
    );
    if (thickness === nominalDepth(formBoard) && gapUnderForm === 0) {
      notes.push(tradeNote('mix', 'caution', 'nominal-depth', { facts }));
    }
  }
  return {
    figured: {
      thickness,
      formDepth: depth,
      slab,
      ...(thickened ? { thickened } : {}),
      net,
      atFormDepth,
    },
    notes,
  };
}
