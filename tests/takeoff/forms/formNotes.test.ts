import { describe, expect, test } from 'vitest';
import type { Practices } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { INCH } from '../../../src/units/grid.ts';
import { jobOf, shape } from '../outline/site.ts';

const PAD = shape('pad', 'pad', [
  [0, 0],
  [10, 0],
  [10, 8],
  [0, 8],
]);
const CODES = ['form-gap', 'form-cut', 'form-proud'];

function said(practices: Partial<Practices>) {
  const job = jobOf([PAD]);
  const { notes } = takeoff({ ...job, practices: { ...job.practices, ...practices } });
  return notes
    .filter(({ code }) => CODES.includes(code))
    .map(({ code, facts = {} }) => {
      const inches = ({ grid }: { grid: number }) => grid / INCH;
      const fact = facts['gap'] ?? facts['cut'] ?? facts['proud'];
      return [code, fact?.of === 'length' ? inches(fact) : undefined];
    });
}

describe('the board’s depth against the slab’s', () => {
  test.each([
    // A 2x4 is 3 1/2 in deep.
    ['as deep as the slab, on the ground', { thickness: 3.5 * INCH, gapUnderForm: 0 }, []],
    ['lifted to the slab', { thickness: 4 * INCH, gapUnderForm: 0.5 * INCH }, [['form-gap', 0.5]]],
    ['too shallow', { thickness: 5 * INCH, gapUnderForm: 0 }, [['form-cut', 1.5]]],
    [
      'lifted, and still too shallow',
      { thickness: 5 * INCH, gapUnderForm: INCH },
      [
        ['form-gap', 1],
        ['form-cut', 0.5],
      ],
    ],
    // 2x6: 5 1/2 in.
    ['too deep', { thickness: 4 * INCH, gapUnderForm: 0, formBoard: '2x6' }, [['form-proud', 1.5]]],
  ] as const)('%s', (_, practices, notes) => {
    expect(said(practices)).toEqual(notes);
  });
});

test('no form against old concrete, and how much of the edge that is', () => {
  const slab = shape('existing-slab', 'slab', [
    [0, 8],
    [10, 8],
    [10, 12],
    [0, 12],
  ]);
  const { notes } = takeoff(jobOf([PAD, slab]));
  const note = notes.find(({ code }) => code === 'form-none-against-old');
  expect(note?.facts?.['length']).toEqual({ of: 'length', grid: 120 * INCH });
  expect(takeoff(jobOf([PAD])).notes.map(({ code }) => code)).not.toContain(
    'form-none-against-old',
  );
});
