import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply } from '../../src/job/commands.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Feature, TruckBoards } from '../../src/job/job.ts';
import { parseJob } from '../../src/job/parse.ts';
import { JOB_PROBLEMS } from '../../src/job/problems.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { blankJob } from '../../src/job/start.ts';
import { FOOT, INCH, METRE } from '../../src/units/grid.ts';
import { numbersFrom, randomCommand, walk, walkSeed } from './randomCommands.ts';
import { done, frozen, jobOf, outline, padOf, refused } from './site.ts';

describe('any walk of commands', { timeout: 60_000 }, () => {
  test('leaves a job that its own file reader takes, and comes back from it the same', () => {
    const codes = new Set<string>();
    let reached = 0;
    fc.assert(
      fc.property(walkSeed, fc.boolean(), (seed, fromDemo) => {
        const { states, refusals } = walk(fromDemo ? demoJob() : blankJob(), seed, 40);
        for (const code of refusals) codes.add(code);
        for (const job of states) {
          reached += 1;
          expect(parseJob(serializeJob(job))).toEqual({ ok: true, value: job });
        }
      }),
      { seed: 7, numRuns: 200 },
    );
    // The walks must have gone somewhere, and been turned away for many reasons, all of them known ones.
    expect(reached).toBeGreaterThan(2000);
    expect(
      [...codes].filter((code) => !(JOB_PROBLEMS as readonly string[]).includes(code)),
    ).toEqual([]);
    expect([...codes]).toEqual(
      expect.arrayContaining([
        'attachment-circle',
        'attached-to-itself',
        'corners-coincide',
        'edge-turns-over',
        'id-taken',
        'no-such-feature',
        'no-such-edge',
        'not-an-outline',
        'not-for-this-kind',
        'not-on-grid',
        'not-round',
        'size-not-positive',
        'too-few-corners',
        'too-large',
        'field-long',
        'field-range',
      ]),
    );
  });

  test('changes nothing in the job it started from, and nothing at all when refused', () => {
    fc.assert(
      fc.property(walkSeed, (seed) => {
        const draw = numbersFrom(seed);
        let job = frozen(demoJob());
        for (let step = 0; step < 25; step++) {
          const outcome = apply(job, frozen(randomCommand(job, draw)));
          if (outcome.ok) job = frozen(outcome.value);
        }
      }),
      { seed: 8, numRuns: 60 },
    );
  });

  test('switching units changes nothing but the units', () => {
    fc.assert(
      fc.property(walkSeed, (seed) => {
        const job = walk(demoJob(), seed, 20).states.at(-1) ?? demoJob();
        const metric = done(job, { do: 'set-units', units: 'metric' });
        const back = done(metric, { do: 'set-units', units: job.units });
        expect({ ...metric, units: job.units }).toEqual(job);
        expect(back).toEqual(job);
        expect(metric.features).toBe(job.features);
      }),
      { seed: 9, numRuns: 40 },
    );
  });
});

test('what isn’t there is refused', () => {
  const job = jobOf(padOf('0,0 10,0 10,10'));
  expect(refused(job, { do: 'remove-feature', feature: 'f9' })).toBe('no-such-feature');
  expect(refused(job, { do: 'remove-corner', feature: 'f1', corner: 'c9' })).toBe('no-such-corner');
  expect(refused(job, { do: 'set-round', feature: 'f1', diameter: 5 })).toBe('not-round');
});

test('a new feature raises the next number beyond its own', () => {
  const job = jobOf(padOf('0,0 10,0 10,10'));
  expect(job.nextId).toBe(5);
  expect(refused(job, { do: 'add-feature', feature: padOf('0,0 10,0 10,10') })).toBe('id-taken');
});

test('too big and too far are refused with the feature that did it', () => {
  const job = jobOf(padOf('0,0 120,0 120,120'));
  const far = (x: number) =>
    apply(job, { do: 'move-corner', feature: 'f1', corner: 'c3', to: { x, y: 0 } });
  expect(far(64_000_000)).toMatchObject({ ok: true });
  expect(far(64_000_001)).toMatchObject({ problems: { code: 'too-large', where: 'f1' } });
  expect(far(640_000_001)).toMatchObject({ problems: { code: 'too-far' } });
  expect(far(Number.NaN)).toMatchObject({ problems: { code: 'not-on-grid' } });
  expect(far(0.5)).toMatchObject({ problems: { code: 'not-on-grid' } });
});

test('what changes nothing gives the same job', () => {
  const job = demoJob();
  expect(done(job, { do: 'set-units', units: job.units })).toBe(job);
  expect(done(job, { do: 'set-text', name: job.name })).toBe(job);
  expect(done(job, { do: 'move-feature', feature: 'f20', by: { x: 0, y: 0 } })).toBe(job);
  expect(done(job, { do: 'turn-feature', feature: 'f20', degrees: 360 })).toBe(job);
  expect(done(job, { do: 'order-feature', feature: 'f1', to: -3 })).toBe(job);
  expect(done(job, { do: 'set-rise', feature: 'f20', corner: 'c21', rise: 0 })).toBe(job);
  // The round post, turned about its own middle.
  expect(done(job, { do: 'turn-feature', feature: 'f50', degrees: 90 })).toBe(job);
  const length = 96.5 * 8128;
  expect(
    done(job, { do: 'set-edge-length', feature: 'f20', corner: 'c21', length, moves: 'end' }),
  ).toBe(job);
});

test('drawing order', () => {
  const job = jobOf(padOf('0,0 9,0 9,9'), padOf('0,0 9,0 9,9', 12), padOf('0,0 9,0 9,9', 22));
  const order = (feature: string, to: number) =>
    done(job, { do: 'order-feature', feature, to }).features.map(({ id }) => id);
  expect(order('f1', 1)).toEqual(['f11', 'f1', 'f21']);
  expect(order('f1', 99)).toEqual(['f11', 'f21', 'f1']);
  expect(order('f21', 0)).toEqual(['f21', 'f1', 'f11']);
});

test('settings that belong to another kind are refused', () => {
  const job = demoJob();
  expect(refused(job, { do: 'set-feature', feature: 'f20', treads: 2 })).toBe('not-for-this-kind');
  expect(refused(job, { do: 'set-feature', feature: 'f20', closed: false })).toBe(
    'not-for-this-kind',
  );
  const wall = done(job, { do: 'set-feature', feature: 'f6', pourAgainst: true, name: 'Wall' });
  expect(wall.features.find(({ id }) => id === 'f6')).toMatchObject({
    pourAgainst: true,
    name: 'Wall',
  });
});

test('a utility line is open, and says what it carries', () => {
  const line = (closed: boolean): Feature => ({
    id: 'f1',
    name: '',
    kind: 'utility-line',
    service: 'gas',
    shape: outline('0,0 50,0 50,90', 2, closed),
  });
  expect(refused(blankJob(), { do: 'add-feature', feature: line(true) })).toBe('field-not-open');
  const job = jobOf(line(false));
  expect(refused(job, { do: 'set-feature', feature: 'f1', closed: true })).toBe(
    'not-for-this-kind',
  );
  const water = done(job, { do: 'set-feature', feature: 'f1', service: 'water' });
  expect(water.features[0]).toMatchObject({ service: 'water' });
  const pad = jobOf(padOf('0,0 10,0 10,10'));
  expect(refused(pad, { do: 'set-feature', feature: 'f1', service: 'water' })).toBe(
    'not-for-this-kind',
  );
});

test('a joint is open and straight, and says what it is for', () => {
  const line = (closed: boolean): Feature => ({
    id: 'f1',
    name: '',
    kind: 'joint',
    joint: 'control',
    shape: outline('0,0 50,0 50,90', 2, closed),
  });
  expect(refused(blankJob(), { do: 'add-feature', feature: line(true) })).toBe('field-not-open');
  const job = jobOf(line(false));
  const stop = done(job, { do: 'set-feature', feature: 'f1', joint: 'construction' });
  expect(stop.features[0]).toMatchObject({ joint: 'construction' });
  const [feature] = job.features;
  const corner = feature?.shape.form === 'outline' ? feature.shape.corners[0]!.id : '';
  expect(refused(job, { do: 'set-rise', feature: 'f1', corner, rise: INCH })).toBe(
    'joint-not-straight',
  );
  const pad = jobOf(padOf('0,0 10,0 10,10'));
  expect(refused(pad, { do: 'set-feature', feature: 'f1', joint: 'existing' })).toBe(
    'not-for-this-kind',
  );
});

describe('boards of truck and yard', () => {
  const job = demoJob();
  const board: TruckBoards = {
    id: 't1',
    size: '2x4',
    length: 12 * FOOT,
    count: 2,
    twisted: false,
  };
  const set = (part: Partial<TruckBoards> & { readonly more?: TruckBoards }) => {
    const { more, ...changed } = part;
    const truck = [{ ...board, ...changed }, ...(more ? [more] : [])];
    return apply(job, { do: 'set-lumber', lumber: { ...job.lumber, truck } });
  };

  test('what is right goes in, and nothing else changes', () => {
    const outcome = set({});
    expect(outcome).toMatchObject({ ok: true, value: { lumber: { truck: [board] } } });
    if (outcome.ok) expect({ ...outcome.value, lumber: job.lumber }).toEqual(job);
  });
  test('no length, an absurd one, or none that is a number', () => {
    for (const [length, code] of [
      [0, 'board-too-short'],
      [-FOOT, 'board-too-short'],
      [FOOT - 1, 'board-too-short'],
      [20 * METRE + 1, 'board-too-long'],
      [Number.NaN, 'field-type'],
      [12.5, 'field-type'],
    ] as const) {
      expect(set({ length })).toMatchObject({ problems: { code, where: 'truck[0].length' } });
    }
    expect(set({ length: FOOT })).toMatchObject({ ok: true });
    expect(set({ length: 20 * METRE })).toMatchObject({ ok: true });
  });
  test('none, or a price below nothing', () => {
    expect(set({ count: 0 })).toMatchObject({
      problems: { code: 'board-count', where: 'truck[0].count' },
    });
    const yard = [{ id: 'y1', size: '2x4', length: 8 * FOOT, price: -1 }] as const;
    expect(apply(job, { do: 'set-lumber', lumber: { truck: [], yard } })).toMatchObject({
      problems: { code: 'board-price', where: 'yard[0].price' },
    });
  });
  test('one id for two rows, in one list or across them', () => {
    expect(set({ more: board })).toMatchObject({
      problems: { code: 'field-id-twice', where: 'truck[1].id', facts: { id: 't1' } },
    });
    const yard = [{ id: 't1', size: '2x4', length: 8 * FOOT }] as const;
    expect(apply(job, { do: 'set-lumber', lumber: { truck: [board], yard } })).toMatchObject({
      problems: { code: 'field-id-twice', where: 'yard[0].id' },
    });
  });
  test('a feature may have the number of a board: they are named apart', () => {
    const next = apply(job, {
      do: 'set-lumber',
      lumber: { truck: [{ ...board, id: 'f20' }], yard: [] },
    });
    if (!next.ok) throw new Error('A board was refused for a feature’s id.');
    expect(parseJob(serializeJob(next.value))).toEqual({ ok: true, value: next.value });
  });
});

describe('practices', () => {
  const job = demoJob();
  const set = (practices: Partial<typeof job.practices>) =>
    apply(job, { do: 'set-practices', practices: { ...job.practices, ...practices } });

  test('no thickness, or less', () => {
    for (const thickness of [0, -5]) {
      expect(set({ thickness })).toMatchObject({
        problems: { code: 'field-range', where: 'thickness', facts: { least: 1 } },
      });
    }
  });
  test('a lap as wide as the sheet', () => {
    const { steel } = job.practices;
    expect(set({ steel: { ...steel, mesh: { ...steel.mesh, lapEnds: -1 } } })).toMatchObject({
      problems: { code: 'field-range', where: 'steel.mesh.lapEnds' },
    });
  });
  test('a blend of a mix that isn’t listed', () => {
    const blend = { ...job.practices.mix.blend, other: 'gone' };
    expect(set({ mix: { ...job.practices.mix, blend } })).toMatchObject({
      problems: { code: 'field-no-such-mix', where: 'mix.blend.other', facts: { mix: 'gone' } },
    });
  });
  test('what is right goes in', () => {
    expect(set({ thickness: 8128 * 5 })).toMatchObject({
      ok: true,
      value: { practices: { thickness: 40_640 } },
    });
  });
});
