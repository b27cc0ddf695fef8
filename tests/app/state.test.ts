import { describe, expect, it } from 'vitest';
import {
  commit,
  openState,
  preview,
  shownJob,
  stepBack,
  stepForward,
} from '../../src/app/state.ts';
import type { Command } from '../../src/job/commands.ts';
import { rectangleJob } from '../../src/job/start.ts';
import { FOOT } from '../../src/units/grid.ts';

function opened() {
  const job = rectangleJob(12 * FOOT, 10 * FOOT);
  if (!job.ok) throw new Error('A plain rectangle was refused.');
  return openState('one', job.value, {}, 'system');
}

function padOf(state: ReturnType<typeof opened>) {
  const pad = shownJob(state).features[0];
  if (pad?.shape.form !== 'outline') throw new Error('The pad is gone.');
  return { id: pad.id, corners: pad.shape.corners };
}

function moveFirstCorner(state: ReturnType<typeof opened>, x: number): Command {
  const { id, corners } = padOf(state);
  return { do: 'move-corner', feature: id, corner: corners[0]?.id ?? '', to: { x, y: 0 } };
}

describe('app state', () => {
  it('shows what a gesture would do and keeps nothing of it when it is called off', () => {
    const before = opened();
    const during = preview(before, moveFirstCorner(before, -FOOT));
    expect(padOf(during).corners[0]?.x).toBe(-FOOT);
    const after = preview(during, null);
    expect(shownJob(after)).toBe(shownJob(before));
    expect(after.history).toBe(before.history);
  });

  it('previews from the committed job, so that a drag never adds up', () => {
    const before = opened();
    const { id } = padOf(before);
    const by = { do: 'move-feature', feature: id, by: { x: FOOT, y: 0 } } as const;
    const twice = preview(preview(before, by), by);
    expect(padOf(twice).corners[0]?.x).toBe(FOOT);
  });

  it('makes one step of undo of one commit', () => {
    const before = opened();
    const after = commit(before, moveFirstCorner(before, -FOOT));
    expect(after.history.past).toHaveLength(1);
    expect(shownJob(stepBack(after))).toBe(shownJob(before));
    expect(shownJob(stepForward(stepBack(after)))).toBe(shownJob(after));
  });

  it('changes nothing when a command is refused, and says why', () => {
    const before = opened();
    const after = commit(before, { do: 'remove-feature', feature: 'nowhere' });
    expect(shownJob(after)).toBe(shownJob(before));
    expect(after.refusal?.code).toBeTruthy();
    expect(commit(after, moveFirstCorner(after, -FOOT)).refusal).toBeNull();
  });

  it('lets go of a selection whose feature is gone', () => {
    const before = { ...opened(), selection: { feature: 'f1' } };
    const after = commit(before, { do: 'remove-feature', feature: 'f1' });
    expect(after.selection).toBeNull();
  });

  it('lets go of a corner that is gone, but not of its feature', () => {
    const state = opened();
    const corner = padOf(state).corners[1]?.id ?? '';
    const before = { ...state, selection: { feature: 'f1', corner } };
    const after = commit(before, { do: 'remove-corner', feature: 'f1', corner });
    expect(after.selection).toEqual({ feature: 'f1' });
  });

  it('lets go of a stake set by hand that is freed, or undone; one of the plan it leaves', () => {
    const set = commit(opened(), { do: 'pin-stake', at: { x: FOOT, y: 0 } });
    const id = set.history.now.job.handStakes[0]?.id ?? '';
    const before = { ...set, selection: { stake: { hand: id } } };
    expect(commit(before, { do: 'free-stake', id }).selection).toBeNull();
    expect(stepBack(before).selection).toBeNull();
    const planned = { ...set, selection: { stake: { run: 'R1', along: FOOT } } };
    expect(stepBack(planned).selection).toBe(planned.selection);
  });

  it('changes nothing while another tab has the job', () => {
    const before = { ...opened(), hold: 'other-tab' as const };
    const after = commit(before, moveFirstCorner(before, -FOOT));
    expect(after.history).toBe(before.history);
    expect(after.refusal?.code).toBe('open-in-other-tab');
    expect(stepBack(after)).toBe(after);
  });
});
