import { describe, expect, test } from 'vitest';
import type { HandStake, Job } from '../../../src/job/job.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, shape } from '../outline/site.ts';
import { staked } from './staked.ts';

const pad = shape('pad', 'pad', [
  [0, 0],
  [12, 0],
  [12, 10],
  [0, 10],
]);
// The front edge, R1, has stakes at 1, 3 1/2, 6, 8 1/2 and 11 ft.
const EVEN = [1, 3.5, 6, 8.5, 11];

function withHand(...stakes: readonly (readonly [HandStake['is'], number, number])[]): Job {
  return {
    ...jobOf([pad]),
    handStakes: stakes.map(([is, x, y], i) => ({
      id: `s${i}`,
      is,
      at: { x: Math.round(x * FOOT), y: Math.round(y * FOOT) },
    })),
  };
}

function front(job: Job, splices?: readonly number[]) {
  const result = staked(
    job,
    {},
    splices && new Map([['R1', splices.map((feet) => Math.round(feet * FOOT))]]),
  );
  const stakes = result.stakes!.stakes.filter(({ run }) => run === 'R1');
  return { ...result, along: stakes.map(({ along }) => along / FOOT), r1: stakes };
}

describe('a stake set by hand', () => {
  test('stands where it was put, at the nearest place on a run, and the others go by it', () => {
    const { along, r1, stakes } = front(withHand(['pinned', 4, 0.5]));
    expect(along).toContain(4);
    expect(r1.find((stake) => stake.along === 4 * FOOT)).toMatchObject({
      hand: 's0',
      at: { x: 4 * FOOT, y: -2.25 * INCH },
    });
    expect(along).toHaveLength(5);
    for (let i = 1; i < along.length; i++) expect(along[i]! - along[i - 1]!).toBeLessThanOrEqual(3);
    expect(stakes!.broken).toEqual([]);
  });

  test('one more than it takes is no fault', () => {
    const { along, stakes } = front(withHand(['pinned', 2, 0], ['pinned', 2.5, 0]));
    expect(along).toEqual(expect.arrayContaining([2, 2.5]));
    expect(stakes!.broken).toEqual([]);
    expect(stakes!.byRun[0]!.count).toBe(along.length);
  });

  test('at the very end it stands at the end of its board', () => {
    expect(front(withHand(['pinned', 12, -0.3])).along.at(-1)).toBeCloseTo(12 - 0.75 / 12, 5);
  });

  test('where none may be driven stands all the same, and the rule it breaks is named', () => {
    const job = withHand(['pinned', 6, 0]);
    const roots = shape('no-stake-zone', 'roots', [
      [5, -3],
      [7, -3],
      [7, -0.01],
      [5, -0.01],
    ]);
    const { along, stakes, notes } = front({ ...job, features: [...job.features, roots] });
    expect(along).toContain(6);
    expect(stakes!.broken).toEqual([
      {
        run: 'R1',
        rule: 'blocked',
        at: { x: 6 * FOOT, y: -2.25 * INCH },
        found: 0,
        allowed: 0.75 * INCH,
        hand: 's0',
      },
    ]);
    expect(notes.map(({ code }) => code)).toContain('broken-blocked');
  });

  test('on no run any more is said, and counted nowhere', () => {
    const { along, notes } = front(withHand(['pinned', 4, -1.5]));
    expect(along).toEqual(EVEN);
    const note = notes.find(({ code }) => code === 'hand-stakes-off')!;
    expect(note.at).toEqual([{ x: 4 * FOOT, y: -1.5 * FOOT }]);
    // A foot away it still is the run's.
    expect(front(withHand(['pinned', 4, -1])).along).toContain(4);
  });
});

describe('a stake left out by hand', () => {
  test('is left out of the plan that has it, and the gap is named', () => {
    const { along, stakes, notes } = front(withHand(['removed', 6, 0]));
    expect(along).toEqual([1, 3.5, 8.5, 11]);
    expect(stakes!.broken).toEqual([
      {
        run: 'R1',
        rule: 'spacing',
        at: { x: 6 * FOOT, y: -2.25 * INCH },
        found: 5 * FOOT,
        allowed: 3 * FOOT,
        hand: 's0',
      },
    ]);
    expect(stakes!.byRun[0]).toMatchObject({ count: 4, gap: 5 * FOOT, evenly: 5 });
    expect(notes.map(({ code }) => code)).toContain('broken-spacing');
  });

  test('at an end names how far the next one is from it', () => {
    const { stakes } = front(withHand(['removed', 11, 0]));
    expect(stakes!.broken).toMatchObject([
      { rule: 'from-end', found: 3.5 * FOOT, allowed: FOOT, hand: 's0' },
    ]);
  });

  test('two side by side leave one gap, named once', () => {
    const { stakes } = front(withHand(['removed', 6, 0], ['removed', 3.5, 0]));
    expect(stakes!.broken).toMatchObject([{ rule: 'spacing', found: 7.5 * FOOT }]);
  });

  test('next to one that was pinned breaks nothing', () => {
    const { along, stakes } = front(withHand(['removed', 6, 0], ['pinned', 5.75, 0]));
    expect(along).not.toContain(6);
    expect(along).toContain(5.75);
    expect(stakes!.broken).toEqual([]);
  });

  test('every one of a run: its whole length is named', () => {
    const job = withHand(...EVEN.map((x) => ['removed', x, 0] as const));
    const { along, stakes } = front(job);
    expect(along).toEqual([]);
    expect(stakes!.broken).toMatchObject([{ rule: 'from-end', found: 12 * FOOT, allowed: FOOT }]);
  });
});

describe('splices', () => {
  test('have a stake on either side, no farther than from an end', () => {
    for (const splice of [2, 4.2, 5, 7.25, 9]) {
      const { along, stakes } = front(withHand(), [splice]);
      const before = along.findLast((place) => place < splice)!;
      const after = along.find((place) => place > splice)!;
      expect(splice - before).toBeLessThanOrEqual(1);
      expect(after - splice).toBeLessThanOrEqual(1);
      expect(Math.min(splice - before, after - splice)).toBeGreaterThanOrEqual(0.0625);
      expect(stakes!.broken).toEqual([]);
      expect(stakes!.fastening.cleats).toBe(1);
    }
  });

  test('whose stake was left out are named', () => {
    const plan = front(withHand(), [5]);
    const near = plan.along.find((place) => place > 5)!;
    const { stakes } = front(withHand(['removed', near, 0]), [5]);
    const rule = stakes!.broken.find((one) => one.rule === 'splice')!;
    expect(rule).toMatchObject({ run: 'R1', allowed: FOOT, hand: 's0' });
    expect(rule.found).toBeGreaterThan(FOOT);
  });
});
