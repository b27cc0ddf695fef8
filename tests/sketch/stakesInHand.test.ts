import { describe, expect, test } from 'vitest';
import { saidBroken } from '../../src/sketch/brokenRules.ts';
import { placeOn } from '../../src/sketch/formLine.ts';
import { runEnds } from '../../src/sketch/runEnds.ts';
import { spokenStake } from '../../src/sketch/spoken.ts';
import { lengthsAbout, removedPlaces, stakeInHand } from '../../src/sketch/stakesInHand.ts';
import { NOTHING } from '../../src/sketch/tools/machine.ts';
import { en } from '../../src/sketch/words/en.ts';
import type { BrokenRule } from '../../src/takeoff/result.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT } from '../../src/units/grid.ts';
import { formLineFor, formsJob, handStake, withHandStakes } from './forms.ts';
import { outline, PAD } from './jobs.ts';

const job = withHandStakes(
  formsJob(PAD),
  handStake('s1', 'pinned', 8, 0),
  handStake('s2', 'removed', 12, 0),
);
const figured = takeoff(job);
const [run] = formLineFor(job).runs;
if (!run) throw new Error('the pad has a run');

describe('above the drawing', () => {
  test('places that stakes were taken from', () => {
    if (!figured.forms) throw new Error('the pad has forms');
    const removed = removedPlaces(job.handStakes, figured.forms);
    expect(removed.map(({ face }) => face.x / FOOT)).toEqual([12]);
  });

  test('the picked one, with its distances', () => {
    const picked = stakeInHand(job, figured, { stake: { hand: 's1' } }, NOTHING);
    expect(picked).toMatchObject({ is: 'pinned', hand: 's1', along: 8 * FOOT });
    expect(picked && lengthsAbout(picked, job.units)).toEqual(['8\'-0"', '12\'-0"']);
    expect(stakeInHand(job, { notes: [] }, { stake: { hand: 's1' } }, NOTHING)).toBeNull();
    expect(stakeInHand(job, figured, { feature: 'pad' }, NOTHING)).toBeNull();
  });

  test('a dragged one is where the hand has it', () => {
    const sliding = { place: placeOn(run, 9 * FOOT), hand: 's1' };
    const picked = stakeInHand(job, figured, null, { ...NOTHING, sliding });
    expect(picked).toMatchObject({ is: 'pinned', hand: 's1', along: 9 * FOOT });
  });
});

describe('in words', () => {
  test('the ends of a run by the pad’s corners; several pads by name', () => {
    expect(runEnds(job, run, en)).toEqual({ start: 'corner A', end: 'corner B' });
    const other = outline('other', 'pad', [
      [40, 0],
      [50, 0],
      [50, 9],
    ]);
    const two = formsJob(PAD, other);
    const [first] = formLineFor(two).runs;
    if (!first) throw new Error('the pads have runs');
    expect(runEnds(two, first, en).start).toBe('corner A of Pad 1');
    expect(runEnds(formsJob(), first, en)).toEqual({ start: 'the start', end: 'the end' });
  });

  test('the picked stake, for somebody who does not see it', () => {
    const picked = stakeInHand(job, figured, { stake: { hand: 's1' } }, NOTHING);
    if (!picked) throw new Error('it is picked');
    expect(spokenStake(job, picked, en)).toBe(
      'Selected: Stake on R1, pinned by hand, 8\'-0" from corner A',
    );
  });

  test.each(['spacing', 'from-end', 'splice', 'blocked'] as const)(
    'a broken rule (%s) of the stake that broke it, once, with both lengths',
    (rule) => {
      if (!figured.stakes) throw new Error('stakes are figured');
      const one: BrokenRule = {
        run: 'R1',
        rule,
        at: { x: 0, y: 0 },
        found: 4 * FOOT,
        allowed: 3 * FOOT,
        hand: 's2',
      };
      const broken = { ...figured, stakes: { ...figured.stakes, broken: [one, { ...one }] } };
      const said = saidBroken(broken, 's2', job, en);
      expect(said).toHaveLength(1);
      expect(said[0]).toContain('4\'-0"');
      expect(said[0]).toContain('3\'-0"');
      expect(saidBroken(broken, 's1', job, en)).toEqual([]);
      expect(saidBroken(broken, null, job, en)).toEqual([]);
    },
  );
});
