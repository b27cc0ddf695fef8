import { describe, expect, test } from 'vitest';
import {
  isPicked,
  pickedIn,
  pickOf,
  placeOn,
  steppedAlong,
  steppedPlace,
} from '../../src/sketch/formLine.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { formLineFor, formsJob, handStake, withHandStakes } from './forms.ts';
import { PAD } from './jobs.ts';

const job = formsJob(PAD);
const line = formLineFor(job);
const [run] = line.runs;
if (!run) throw new Error('the pad has a run');

describe('stakes as a pointer finds them', () => {
  test('each of the plan, along every run in turn, on the inside face', () => {
    const first = line.stakes.filter((stake) => stake.run === run);
    expect(first.map(({ along }) => along / FOOT)).toEqual([1, 4, 7, 10, 13, 16, 19]);
    expect(first.every(({ is, hand, face }) => is === 'planned' && !hand && face.y === 0)).toBe(
      true,
    );
    const marks = line.stakes.map((stake) => stake.run.mark);
    expect(marks).toEqual([...marks].sort());
    expect(line.stakes).toHaveLength(takeoff(job).stakes?.stakes.length ?? 0);
  });

  test('those set by hand lie among them at their place', () => {
    const set = withHandStakes(
      job,
      handStake('s1', 'pinned', 5, 0),
      handStake('s2', 'removed', 20, 6),
    );
    const found = formLineFor(set).stakes.filter(({ hand }) => hand !== null);
    expect(found.map(({ hand, is, along, run: on }) => [hand, is, on.mark, along / FOOT])).toEqual([
      ['s1', 'pinned', 'R1', 5],
      ['s2', 'removed', 'R2', 6],
    ]);
  });

  test('one that is on no form any more is kept apart', () => {
    const set = withHandStakes(job, handStake('s1', 'pinned', 10, 5));
    const { stakes, off } = formLineFor(set);
    expect(stakes.filter(({ hand }) => hand !== null)).toEqual([]);
    expect(off).toEqual(set.handStakes);
    expect(pickedIn(set, takeoff(set), { hand: 's1' })).toBeNull();
  });

  test('a stake is found again by how it was picked, until it is gone', () => {
    const set = withHandStakes(job, handStake('s1', 'pinned', 5, 0));
    const figured = takeoff(set);
    for (const stake of formLineFor(set).stakes) {
      const picked = pickOf(stake);
      expect(isPicked(stake, picked)).toBe(true);
      expect(pickedIn(set, figured, picked)).toEqual(stake);
    }
    expect(pickedIn(set, figured, { run: 'R1', along: 123 })).toBeNull();
    expect(pickedIn(set, figured, { hand: 's9' })).toBeNull();
    expect(pickedIn(set, { notes: [] }, { hand: 's1' })).toBeNull();
  });
});

describe('a place on the forms', () => {
  test('is a whole step from the nearer end', () => {
    expect(steppedAlong(run, 3.4 * FOOT, FOOT)).toBe(3 * FOOT);
    expect(steppedAlong(run, 17.4 * FOOT, FOOT)).toBe(17 * FOOT);
    const odd = { ...run, length: 10 * FOOT + 5 * INCH };
    expect(steppedAlong(odd, 9.6 * FOOT, FOOT)).toBe(odd.length - FOOT);
    expect(steppedAlong(odd, 1.2 * FOOT, FOOT)).toBe(FOOT);
  });

  test('leaves a stake its whole width on the board', () => {
    expect(steppedAlong(run, -FOOT, FOOT)).toBe(0.75 * INCH);
    expect(steppedAlong(run, 25 * FOOT, FOOT)).toBe(run.length - 0.75 * INCH);
    const short = { ...run, length: INCH };
    expect(steppedAlong(short, 0, FOOT)).toBe(INCH / 2);
  });

  test('goes to the run that is nearest', () => {
    const at = (x: number, y: number) =>
      steppedPlace(line.runs, { x: x * FOOT, y: y * FOOT }, FOOT);
    expect(at(8.2, -1)).toMatchObject({ run: { mark: 'R1' }, face: { x: 8 * FOOT, y: 0 } });
    expect(at(19.5, 4.2)).toMatchObject({
      run: { mark: 'R2' },
      face: { x: 20 * FOOT, y: 4 * FOOT },
    });
    expect(steppedPlace([], { x: 0, y: 0 }, FOOT)).toBeNull();
  });

  test('has its way out of the pour', () => {
    expect(placeOn(run, FOOT).outward).toBeCloseTo(-Math.PI / 2, 12);
  });
});
