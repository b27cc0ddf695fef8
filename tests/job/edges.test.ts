import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply, type Command } from '../../src/job/commands.ts';
import { rectangleJob } from '../../src/job/start.ts';
import { INCH, SIXTEENTH } from '../../src/units/grid.ts';
import { areaOf, cornersOf, done, jobOf, outline, padOf, refused, written } from './site.ts';

function setLength(
  corner: string,
  inches: number,
  moves: 'start' | 'end',
  carry?: 'corner' | 'side',
): Command {
  const length = inches * INCH;
  return {
    do: 'set-edge-length',
    feature: 'f1',
    corner,
    length,
    moves,
    ...(carry ? { carry } : {}),
  };
}

// 5-----4
// |     |
// |     3-----2     c2 0,0 … counter-clockwise from the lower left
// |           |
// 0-----------1
const ELL = '0,0 120,0 120,48 60,48 60,96 0,96';

describe('a new length', () => {
  test('slides the side, so that square stays square', () => {
    const job = jobOf(padOf(ELL));
    expect(written(done(job, setLength('c2', 144, 'end')), 'f1')).toBe(
      '0,0 144,0 144,48 60,48 60,96 0,96',
    );
    expect(written(done(job, setLength('c2', 144, 'start')), 'f1')).toBe(
      '-24,0 120,0 120,48 60,48 60,96 -24,96',
    );
    expect(written(done(job, setLength('c4', 40, 'end')), 'f1')).toBe(
      '0,0 120,0 120,48 80,48 80,96 0,96',
    );
  });

  test('or moves one corner alone', () => {
    const job = jobOf(padOf(ELL));
    expect(written(done(job, setLength('c2', 144, 'end', 'corner')), 'f1')).toBe(
      '0,0 144,0 120,48 60,48 60,96 0,96',
    );
  });

  test('takes a side with it that runs on straight over a corner', () => {
    const job = jobOf(padOf('0,0 120,0 120,30 120,60 120,96 0,96'));
    expect(written(done(job, setLength('c2', 130, 'end')), 'f1')).toBe(
      '0,0 130,0 130,30 130,60 130,96 0,96',
    );
  });

  test('on a corner in the middle of a straight, moves that corner along', () => {
    const job = jobOf(padOf('0,0 60,0 120,0 120,96 0,96'));
    expect(written(done(job, setLength('c2', 70, 'end')), 'f1')).toBe('0,0 70,0 120,0 120,96 0,96');
    expect(refused(job, setLength('c2', 120, 'end'))).toBe('edge-turns-over');
    expect(refused(job, setLength('c2', 130, 'end'))).toBe('edge-turns-over');
  });

  test('keeps the slant of the sides beside it', () => {
    // A trapezium: the right side leans. Its slant and the top's direction stay.
    const job = jobOf(padOf('0,0 120,0 100,80 0,80'));
    expect(written(done(job, setLength('c2', 160, 'end')), 'f1')).toBe('0,0 160,0 140,80 0,80');
    // A side of 50 (30, 40) halved.
    const leaning = jobOf(padOf('0,0 120,0 90,40 0,40'));
    expect(written(done(leaning, setLength('c3', 25, 'end')), 'f1')).toBe('0,0 120,0 105,20 0,20');
  });

  test('of a triangle keeps its angles', () => {
    const job = jobOf(padOf('0,0 40,0 0,30'));
    expect(written(done(job, setLength('c2', 80, 'end')), 'f1')).toBe('0,0 80,0 0,60');
  });

  test('of an open line moves what hangs on its end', () => {
    const line = { ...padOf('0,0'), kind: 'building-line', pourAgainst: true } as const;
    const job = jobOf({ ...line, shape: outline('0,0 50,0 50,30', 2, false) });
    expect(written(done(job, setLength('c2', 70, 'end')), 'f1')).toBe('0,0 70,0 70,30');
    expect(written(done(job, setLength('c2', 70, 'start')), 'f1')).toBe('-20,0 50,0 50,30');
    expect(refused(job, setLength('c4', 70, 'end'))).toBe('no-such-edge');
  });

  test('that would turn an edge over is refused', () => {
    const job = jobOf(padOf(ELL));
    expect(refused(job, setLength('c2', 60, 'end'))).toBe('edge-turns-over');
    expect(refused(job, setLength('c2', 50, 'end'))).toBe('edge-turns-over');
    expect(refused(job, setLength('c2', 0, 'end'))).toBe('size-not-positive');
    expect(refused(job, setLength('c2', -5, 'end'))).toBe('size-not-positive');
    expect(refused(job, setLength('c2', Number.NaN, 'end'))).toBe('not-on-grid');
  });

  test('every size of a rectangle, typed one after another, gives that rectangle exactly', () => {
    const size = fc.integer({ min: 1, max: 4000 }).map((n) => n * SIXTEENTH);
    fc.assert(
      fc.property(size, size, size, size, (a, b, length, width) => {
        const start = rectangleJob(a, b);
        if (!start.ok) throw new Error('no rectangle');
        const along = { do: 'set-edge-length', feature: 'f1', corner: 'c2', length, moves: 'end' };
        const up = { ...along, corner: 'c3', length: width };
        const job = [along, up].reduce(
          (before, command) => done(before, command as Command),
          start.value,
        );
        const expected = rectangleJob(length, width);
        expect(expected.ok && cornersOf(expected.value, 'f1')).toEqual(cornersOf(job, 'f1'));
      }),
      { seed: 41, numRuns: 200 },
    );
  });
});

describe('a new direction', () => {
  const swing = (degrees: number, moves: 'start' | 'end'): Command => ({
    do: 'set-edge-direction',
    feature: 'f1',
    corner: 'c2',
    degrees,
    moves,
  });

  test('swings the edge about its other end', () => {
    const job = jobOf(padOf('0,0 50,0 90,60'));
    expect(written(done(job, swing(90, 'end')), 'f1')).toBe('0,0 0,50 90,60');
    expect(written(done(job, swing(90, 'start')), 'f1')).toBe('50,-50 50,0 90,60');
    expect(written(done(job, swing(-90, 'end')), 'f1')).toBe('0,0 0,-50 90,60');
  });

  test('keeps the length to the grid', () => {
    const job = jobOf(padOf('0,0 50,0 90,60'));
    const [a, b] = cornersOf(done(job, swing(33.3, 'end')), 'f1');
    if (!a || !b) throw new Error('corners lost');
    expect(Math.abs(Math.hypot(b.x - a.x, b.y - a.y) - 50 * INCH)).toBeLessThan(1);
    expect((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI).toBeCloseTo(33.3, 3);
  });
});

describe('corners put in and taken out', () => {
  test('on a straight edge', () => {
    const job = jobOf(padOf('0,0 50,0 50,50'));
    const at = { x: 25 * INCH, y: -5 * INCH };
    const more = done(job, { do: 'insert-corner', feature: 'f1', after: 'c2', at });
    expect(written(more, 'f1')).toBe('0,0 25,-5 50,0 50,50');
    expect(more.nextId).toBe(job.nextId + 1);
    const less = done(more, { do: 'remove-corner', feature: 'f1', corner: 'c5' });
    expect(written(less, 'f1')).toBe('0,0 50,0 50,50');
  });

  test('on an arc: two arcs of the same circle, and one again', () => {
    const arcs = ['0,0 80,0 ^20 80,60 0,60', '0,0 80,0 ^-12 80,60 0,60', '0,0 80,0 ^45 80,60 0,60'];
    for (const text of arcs) {
      const job = jobOf(padOf(text));
      const rise = cornersOf(job, 'f1')[1]?.rise ?? 0;
      // The top of the arc.
      const at = { x: 80 * INCH + rise, y: 30 * INCH };
      const more = done(job, { do: 'insert-corner', feature: 'f1', after: 'c3', at });
      const area = (of: typeof job) => areaOf(of.features[0]?.shape as never);
      expect(area(more)).toBeCloseTo(area(job), 1);
      expect(area(more)).not.toBeCloseTo(60 * 80, 1);
      const less = done(more, { do: 'remove-corner', feature: 'f1', corner: `c${job.nextId}` });
      expect(Math.abs((cornersOf(less, 'f1')[1]?.rise ?? 0) - rise)).toBeLessThanOrEqual(2);
    }
  });

  test('not below three, or two where an edge is an arc', () => {
    const three = jobOf(padOf('0,0 50,0 50,50'));
    const take = (corner: string) => ({ do: 'remove-corner', feature: 'f1', corner }) as const;
    expect(apply(three, take('c2'))).toMatchObject({
      problems: { code: 'too-few-corners', facts: { least: 3 } },
    });
    const round = jobOf(padOf('0,0 50,0 ^20 50,50'));
    const two = done(round, take('c2'));
    expect(written(two, 'f1')).toBe('50,0 ^20 50,50');
    expect(refused(two, take('c3'))).toBe('too-few-corners');
    expect(refused(two, { do: 'set-rise', feature: 'f1', corner: 'c3', rise: 0 })).toBe(
      'too-few-corners',
    );
  });

  test('not one on top of the other', () => {
    const job = jobOf(padOf('0,0 50,0 50,50'));
    const to = { x: 0, y: 0 };
    expect(refused(job, { do: 'move-corner', feature: 'f1', corner: 'c3', to })).toBe(
      'corners-coincide',
    );
  });
});
