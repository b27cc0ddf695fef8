import type { Practices } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { nominalDepth } from '../forms/rules.ts';
import { tradeNote } from '../notes.ts';
import { bagVolume, count, length, text } from '../quantity.ts';
import type { GroundDepth, VolumeResult } from '../result.ts';
import { DEPTH_DIFFERS, GOOD_READINGS, LEAST_PUBLISHED, UNSEEN_DEPTH } from './rules.ts';

/** What the volume is figured with, and what it may be off by. */
export function volumeNotes(practices: Practices, volume: VolumeResult): readonly Note[] {
  const { ground } = volume;
  return [
    ...depthNotes(practices, volume),
    ...(ground ? groundNotes(practices, volume, ground) : [flatNote(volume)]),
    ...thinNotes(volume),
    ...formNotes(practices, volume),
  ];
}

function depthNotes({ thickenedEdge }: Practices, volume: VolumeResult): readonly Note[] {
  const { thickness, thickened, ground, depthBy } = volume;
  const notes: Note[] = [];
  if (depthBy === 'readings' && ground) {
    const facts = {
      depth: length(thickness),
      readings: count(ground.readings.length, 'reading'),
      error: length(ground.error),
    };
    notes.push(tradeNote('mix', 'assumption', 'depth-from-readings', { facts }));
  }
  if (thickened) {
    const { depth, width } = thickenedEdge;
    const facts = {
      thickness: length(thickness),
      depth: length(depth),
      width: length(width),
      taper: length(thickened.taper),
    };
    notes.push(tradeNote('mix', 'assumption', 'thickened-used', { facts }));
  } else if (depthBy === 'thickness') {
    const facts = { thickness: length(thickness) };
    notes.push(tradeNote('mix', 'assumption', 'thickness-used', { facts }));
  }
  return notes;
}

function flatNote({ area }: VolumeResult): Note {
  return tradeNote('mix', 'assumption', 'flat-ground', {
    facts: { depth: length(UNSEEN_DEPTH), more: bagVolume(area * UNSEEN_DEPTH) },
  });
}

function groundNotes(
  { thickness }: Practices,
  { area, depthBy }: VolumeResult,
  { readings, mean, error, twist }: GroundDepth,
): readonly Note[] {
  const notes: Note[] = [];
  if (twist && twist.high - twist.low > DEPTH_DIFFERS) {
    const facts = {
      low: length(twist.low),
      high: length(twist.high),
      difference: bagVolume(area * (twist.high - twist.low)),
    };
    notes.push(tradeNote('mix', 'caution', 'readings-need-middle', { facts }));
  } else if (readings.length < GOOD_READINGS) {
    const facts = {
      readings: count(readings.length, 'reading'),
      good: count(GOOD_READINGS, 'reading'),
    };
    notes.push(tradeNote('mix', 'caution', 'readings-few', { facts }));
  }
  if (depthBy === 'thickness' && Math.abs(mean - thickness) > DEPTH_DIFFERS) {
    const facts = {
      mean: length(mean),
      error: length(error),
      thickness: length(thickness),
      difference: bagVolume(area * Math.abs(mean - thickness)),
    };
    const code = mean > thickness ? 'readings-deeper' : 'readings-shallower';
    notes.push(tradeNote('mix', 'caution', code, { facts }));
  }
  return notes;
}

function thinNotes({ thickness }: VolumeResult): readonly Note[] {
  if (thickness >= LEAST_PUBLISHED) return [];
  const facts = { thickness: length(thickness), least: length(LEAST_PUBLISHED) };
  return [tradeNote('mix', 'caution', 'slab-thin', { facts })];
}

function formNotes({ formBoard, gapUnderForm }: Practices, volume: VolumeResult): readonly Note[] {
  const { thickness, formDepth, net, atFormDepth, depthBy } = volume;
  // Taped depths are what the ground gives, whatever the board is called.
  if (formDepth === thickness || depthBy === 'readings') return [];
  const facts = {
    thickness: length(thickness),
    depth: length(formDepth),
    difference: bagVolume(Math.abs(atFormDepth - net)),
    board: text(formBoard),
  };
  const code = formDepth > thickness ? 'form-deeper' : 'form-shallower';
  const isNominal = thickness === nominalDepth(formBoard) && gapUnderForm === 0;
  return [
    tradeNote('mix', 'caution', code, { facts }),
    ...(isNominal ? [tradeNote('mix', 'caution', 'nominal-depth', { facts })] : []),
  ];
}
