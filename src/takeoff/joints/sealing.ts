import type { Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import { length } from '../quantity.ts';
import type { JointLayout, SealedJoints } from '../result.ts';
import { lengthOf } from './meeting.ts';

/** A backer rod is thicker than its groove by a quarter, so that it stays: common practice, no source. */
const ROD = 1.25;

/**
 * Sealant in control joints and over strip, where the practices ask for it: what it fills, in whole cartridges, and backer
 * rod under the control joints. Waste is not in it.
 */
export function sealing(
  { joints: { sealant }, isolation: { thickness, recess } }: Practices,
  layout: JointLayout | undefined,
  strip: Grid,
): Figured<SealedJoints> {
  const { width, depth, cartridge } = sealant;
  if (!sealant.joints && !sealant.strip) return { notes: [] };
  if (!(width > 0 && depth > 0 && cartridge > 0 && thickness > 0)) {
    return withheld(tradeNote('joints', 'stop', 'sealant-wrong'));
  }
  const control = sealant.joints && layout ? controlLength(layout) : 0;
  const overStrip = sealant.strip && recess > 0 ? strip : 0;
  const parts = [
    partOf('control', control, width, depth),
    partOf('strip', overStrip, thickness, recess),
  ].filter((part) => part.length > 0);
  const volume = parts.reduce((sum, part) => sum + part.volume, 0);
  const rod = sealant.backer ? ROD * width : 0;
  const notes: Note[] = [];
  if (layout && control > 0 && depth + rod > layout.depth) {
    const facts = { needs: length(depth + rod), depth: length(layout.depth) };
    notes.push(tradeNote('joints', 'caution', 'sealant-shallow', { facts }));
  }
  if (sealant.strip && strip > 0 && recess <= 0) {
    notes.push(tradeNote('joints', 'caution', 'strip-not-sealed'));
  }
  if (parts.length === 0) return { notes };
  return {
    figured: {
      parts,
      volume,
      cartridges: Math.ceil(volume / cartridge),
      backer: sealant.backer ? control : 0,
    },
    notes,
  };
}

/** Control joints end to end, grid units; construction joints are full depth and not sealed here. */
export function controlLength({ joints }: JointLayout): Grid {
  return lengthOfKind(joints, 'control');
}

export function lengthOfKind(
  joints: JointLayout['joints'],
  kind: JointLayout['joints'][number]['kind'],
): Grid {
  return joints
    .filter((joint) => joint.kind === kind)
    .reduce((sum, joint) => sum + Math.round(lengthOf(joint)), 0);
}

function partOf(
  of: SealedJoints['parts'][number]['of'],
  long: Grid,
  width: Grid,
  depth: Grid,
): SealedJoints['parts'][number] {
  return { of, length: long, width, depth, volume: long * width * depth };
}
