import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { takeUp } from '../../../src/sketch/tools/hand.ts';
import type { ToolInput, ToolName } from '../../../src/sketch/tools/tool.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { formLineFor, formsJob } from '../forms.ts';
import { PAD, POST } from '../jobs.ts';
import { commits, play, pointer, sceneOf, tap } from './scene.ts';

const TOOLS: readonly ToolName[] = [
  'pick',
  'pan',
  'draw-pad',
  'draw-existing-slab',
  'draw-building-line',
  'draw-steps',
  'draw-patch',
  'draw-no-stake-zone',
  'block-out-round',
  'block-out-square',
];

const job = formsJob(PAD, POST);
const formLine = formLineFor(job);
const scenes = [
  sceneOf(job),
  sceneOf(job, { feature: 'pad', corner: 'pad-2' }),
  sceneOf(job, null, [], formLine),
  sceneOf(job, { stake: { run: 'R1', along: 4 * FOOT } }, [], formLine),
];
const touches = fc.boolean();
const feet = fc.integer({ min: -4, max: 24 });

const inputs: fc.Arbitrary<ToolInput> = fc.oneof(
  fc
    .tuple(fc.constantFrom('press', 'move', 'move', 'release', 'hold'), feet, feet, touches)
    .map(([kind, x, y, touch]) =>
      pointer(kind as 'press' | 'move' | 'release' | 'hold', x, y, touch),
    ),
  fc.constantFrom<ToolInput>(
    { kind: 'interrupt' },
    { kind: 'key', key: 'Enter', far: false },
    { kind: 'key', key: 'Backspace', far: false },
    { kind: 'key', key: 'ArrowUp', far: true },
    { kind: 'typed', typed: { what: 'start', across: FOOT, up: FOOT } },
    {
      kind: 'typed',
      typed: { what: 'corner', length: 3 * FOOT, heading: 'left', degrees: 90 },
    },
    { kind: 'typed', typed: { what: 'diameter', diameter: FOOT } },
    { kind: 'typed', typed: { what: 'sizes', across: FOOT, up: -FOOT } },
    { kind: 'typed', typed: { what: 'close' } },
    { kind: 'typed', typed: { what: 'end-open' } },
    { kind: 'typed', typed: { what: 'take-back' } },
  ),
);

describe.each(TOOLS)('%s', (tool) => {
  test('cancel from any state discards and is idle again', () => {
    fc.assert(
      fc.property(
        fc.array(inputs, { maxLength: 12 }),
        fc.constantFrom(...scenes),
        (before, scene) => {
          const { hand } = play(takeUp(tool), scene, before);
          const after = hand.step({ kind: 'cancel' }, scene);
          expect(after.effects).toEqual([{ do: 'discard' }]);
          expect(after.hand.idle).toBe(true);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });

  test('a press and release within slop never changes the job', () => {
    fc.assert(
      fc.property(feet, feet, touches, fc.constantFrom(...scenes), (x, y, touch, scene) => {
        // 3.4 px at 30 px to the foot: as far as slop lets a mouse go.
        const wobble = pointer('move', x + 0.08, y - 0.08, touch);
        const [press, release] = tap(x, y, touch);
        if (!press || !release) throw new Error('a tap has two inputs');
        const { effects } = play(takeUp(tool), scene, [press, wobble, release]);
        expect(effects.filter((effect) => effect.do === 'commit')).toEqual([]);
        expect(effects.filter((effect) => effect.do === 'preview')).toEqual([]);
      }),
      { seed: 8, numRuns: 200 },
    );
  });

  test('one gesture commits at most once', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(feet, feet), { minLength: 2, maxLength: 6 }),
        touches,
        fc.constantFrom(...scenes),
        (places, touch, scene) => {
          const moves = places.map(([x, y]) => pointer('move', x, y, touch));
          const [first] = places;
          const last = places[places.length - 1];
          if (!first || !last) throw new Error('at least two places');
          const { effects } = play(takeUp(tool), scene, [
            pointer('press', ...first, touch),
            ...moves,
            pointer('release', ...last, touch),
          ]);
          expect(commits(effects).length).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 9, numRuns: 200 },
    );
  });
});
