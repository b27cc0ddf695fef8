import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { begin, canRedo, canUndo, type History, push, redo, undo } from '../../src/job/history.ts';
import { blankJob } from '../../src/job/start.ts';
import { walk, walkSeed } from './randomCommands.ts';

function times(count: number, change: (history: History) => History, history: History): History {
  return Array.from({ length: count }).reduce((before: History) => change(before), history);
}

test('undone and redone as often as one likes, every state is the very same', {
  timeout: 60_000,
}, () => {
  fc.assert(
    fc.property(walkSeed, fc.nat(40), (seed, back) => {
      const { states } = walk(demoJob(), seed, 30);
      const [first = demoJob(), ...rest] = states;
      const full = rest.reduce((history, job, n) => push(history, job, `step ${n}`), begin(first));
      const steps = Math.min(back, full.past.length);
      const undone = times(steps, undo, full);
      expect(undone.now).toBe([...full.past, full.now][full.past.length - steps]);
      expect(times(steps, redo, undone)).toEqual(full);
      expect(times(1000, undo, full).now.job).toBe(first);
    }),
    { seed: 50, numRuns: 60 },
  );
});

test('a new step after undoing drops what was undone', () => {
  const [a, b, c] = ['a', 'b', 'c'].map((name) => ({ ...blankJob(), name }));
  if (!a || !b || !c) throw new Error('no jobs');
  const history = push(undo(push(begin(a), b, 'to b')), c, 'to c');
  expect(history.past.map(({ job }) => job.name)).toEqual(['a']);
  expect(history.now).toEqual({ job: c, label: 'to c' });
  expect(canRedo(history)).toBe(false);
});

test('at either end nothing happens', () => {
  const history = begin(blankJob());
  expect([canUndo(history), canRedo(history)]).toEqual([false, false]);
  expect(undo(history)).toBe(history);
  expect(redo(history)).toBe(history);
  expect(push(history, history.now.job, 'nothing')).toBe(history);
});

test('there is no limit', () => {
  const jobs = Array.from({ length: 5000 }, (_, n) => ({ ...blankJob(), name: `${n}` }));
  const history = jobs.reduce((before, job) => push(before, job, ''), begin(blankJob()));
  expect(times(5000, undo, history).now.job.name).toBe('');
});
