import { describe, expect, test } from 'vitest';
import { edgeLetters, featureName } from '../../src/sketch/featureName.ts';
import { spokenSelection, spokenSnap } from '../../src/sketch/spoken.ts';
import { en } from '../../src/sketch/words/en.ts';
import { jobOf, outline, PAD, POST, post } from './jobs.ts';

const job = jobOf(PAD, POST, post('other', 8, 8, 1));

describe('names', () => {
  test('its own, else its kind, with a number among several', () => {
    const names = job.features.map((feature) => featureName(job, feature, en));
    expect(names).toEqual(['Pad', 'Block-out 1', 'Block-out 2']);
    const named = { ...POST, name: 'Porch post' };
    expect(featureName(jobOf(named), named, en)).toBe('Porch post');
  });

  test('an edge by its corners; none leaves the end of a line', () => {
    const wall = outline(
      'wall',
      'building-line',
      [
        [0, 0],
        [5, 0],
      ],
      false,
    );
    expect(edgeLetters(PAD, 'pad-3')).toEqual({ from: 'D', to: 'A' });
    expect(edgeLetters(wall, 'wall-0')).toEqual({ from: 'A', to: 'B' });
    expect(edgeLetters(wall, 'wall-1')).toBeNull();
    expect(edgeLetters(PAD, 'elsewhere')).toBeNull();
  });
});

describe('what is told to somebody who does not see the sketch', () => {
  test('the selection, with its edge and length', () => {
    expect(spokenSelection(job, { feature: 'pad', corner: 'pad-1' }, en)).toBe(
      'Selected: Pad, corner B, edge B–C, 10\'-0"',
    );
    expect(spokenSelection(job, { feature: 'post' }, en)).toBe('Selected: Block-out 1');
    expect(spokenSelection(job, null, en)).toBe('Nothing selected');
    expect(spokenSelection(job, { feature: 'gone' }, en)).toBe('Nothing selected');
  });

  test('why a point lies where it does; a bare step needs no word', () => {
    const snap = { point: { x: 0, y: 0 }, guides: [] };
    expect(spokenSnap({ ...snap, reasons: ['edge', 'square'] }, en)).toBe('on an edge, square');
    expect(spokenSnap({ ...snap, reasons: ['step'] }, en)).toBe('');
  });
});
