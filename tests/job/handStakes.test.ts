import { describe, expect, test } from 'vitest';
import { apply } from '../../src/job/commands.ts';
import { parseJob } from '../../src/job/parse.ts';
import { MOST_HAND_STAKES } from '../../src/job/schema.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { INCH } from '../../src/units/grid.ts';
import { done, jobOf, padOf, refused } from './site.ts';

const job = jobOf(padOf('0,0 120,0 120,96 0,96'));
const place = (inches: number) => ({ x: inches * INCH, y: 0 });
const pinned = done(job, { do: 'pin-stake', at: place(30) });
const both = done(pinned, { do: 'remove-stake', at: place(60) });

test('a pinned stake and one left out are kept in the order they were set, with new ids', () => {
  expect(both.handStakes).toEqual([
    { id: `s${job.nextId}`, at: place(30), is: 'pinned' },
    { id: `s${job.nextId + 1}`, at: place(60), is: 'removed' },
  ]);
  expect(both.nextId).toBe(job.nextId + 2);
  expect(both.features).toBe(job.features);
  expect(parseJob(serializeJob(both))).toEqual({ ok: true, value: both });
});

test('by its id a stake is moved, left out where it stood, or pinned where it was left out', () => {
  const [first, second] = both.handStakes.map(({ id }) => id);
  if (!first || !second) throw new Error('two were set');
  const moved = done(both, { do: 'pin-stake', id: first, at: place(33) });
  expect(moved.handStakes[0]).toEqual({ id: first, at: place(33), is: 'pinned' });
  expect(moved.nextId).toBe(both.nextId);
  const out = done(moved, { do: 'remove-stake', id: first, at: place(33) });
  expect(out.handStakes[0]).toEqual({ id: first, at: place(33), is: 'removed' });
  expect(done(out, { do: 'pin-stake', id: second, at: place(60) }).handStakes[1]?.is).toBe(
    'pinned',
  );
  expect(done(both, { do: 'pin-stake', id: first, at: place(30) })).toBe(both);
});

test('freed it goes back to the plan, one or all; with none set nothing changes', () => {
  const id = both.handStakes[0]?.id ?? '';
  expect(done(both, { do: 'free-stake', id }).handStakes).toEqual(both.handStakes.slice(1));
  expect(done(both, { do: 'free-stakes' }).handStakes).toEqual([]);
  expect(done(job, { do: 'free-stakes' })).toBe(job);
});

describe('refused', () => {
  test('a stake that isn’t set by hand', () => {
    expect(refused(both, { do: 'free-stake', id: 's99' })).toBe('no-such-stake');
    expect(refused(both, { do: 'pin-stake', id: 's99', at: place(1) })).toBe('no-such-stake');
    expect(refused(both, { do: 'remove-stake', id: 's99', at: place(1) })).toBe('no-such-stake');
  });

  test('two at one place, with the place', () => {
    expect(apply(both, { do: 'pin-stake', at: place(60) })).toMatchObject({
      problems: { code: 'stake-there-already', at: [place(60)] },
    });
    const id = both.handStakes[0]?.id ?? '';
    expect(refused(both, { do: 'pin-stake', id, at: place(60) })).toBe('stake-there-already');
  });

  test.each([
    [Number.NaN, 'not-on-grid'],
    [0.5, 'not-on-grid'],
    [640_000_001, 'too-far'],
  ])('a place at %s', (x, code) => {
    expect(refused(job, { do: 'pin-stake', at: { x, y: 0 } })).toBe(code);
  });

  test('more than a job may have', () => {
    const handStakes = Array.from({ length: MOST_HAND_STAKES }, (_, n) => ({
      id: `s${n + 100}`,
      at: { x: n, y: 1 },
      is: 'pinned' as const,
    }));
    const full = { ...job, handStakes, nextId: MOST_HAND_STAKES + 100 };
    expect(refused(full, { do: 'pin-stake', at: place(1) })).toBe('too-many-hand-stakes');
  });
});

test('they keep their place when the pad moves or goes', () => {
  const away = done(both, { do: 'move-feature', feature: 'f1', by: { x: 9 * INCH, y: 0 } });
  expect(away.handStakes).toBe(both.handStakes);
  expect(done(both, { do: 'remove-feature', feature: 'f1' }).handStakes).toBe(both.handStakes);
});

test('ids of stakes share their numbers with those of shapes', () => {
  const shape = { ...padOf('0,0 9,0 9,9', 90), id: both.handStakes[0]?.id ?? '' };
  expect(refused(both, { do: 'add-feature', feature: shape })).toBe('id-taken');
  const low = JSON.parse(serializeJob(both));
  low.job.nextId = job.nextId + 1;
  expect(parseJob(JSON.stringify(low))).toMatchObject({
    problems: [{ code: 'field-next-id', facts: { least: both.nextId } }],
  });
});

test('a file with a stake 2 km away is refused with its place', () => {
  const far = JSON.parse(serializeJob(both));
  far.job.handStakes[1].at.x = 640_000_001;
  expect(parseJob(JSON.stringify(far))).toMatchObject({
    problems: [{ code: 'too-far', where: 'job.handStakes[1].at' }],
  });
});
