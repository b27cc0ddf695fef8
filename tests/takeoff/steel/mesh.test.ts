import { describe, expect, test } from 'vitest';
import { locate } from '../../../src/geometry/locate.ts';
import type { Job, Practices } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH, POUND_KG, SQUARE_FOOT } from '../../../src/units/grid.ts';
import { jobOf, type Places, post, shape } from '../outline/site.ts';

function pad(places: Places): Job {
  return jobOf([shape('pad', 'pad', places)]);
}

function meshed(job: Job, change: Partial<Practices['steel']['mesh']> = {}) {
  const { steel } = job.practices;
  const mesh = { ...steel.mesh, ...change };
  return takeoff({ ...job, practices: { ...job.practices, steel: { ...steel, mesh } } });
}

function rectangle(long: number, wide: number): Places {
  return [
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ];
}

const ELL: Places = [
  [0, 0],
  [23, 0],
  [23, 9],
  [11, 9],
  [11, 17],
  [0, 17],
];

describe('sheets', () => {
  test('as worked by hand: 9\'-8" × 11\'-8" inside the cover', () => {
    const { steel } = meshed(pad(rectangle(10, 12)));
    // Along the 12 ft: 3 rows of 11'-8", each a sheet and 2'-4"; the three ends come out of one: 4.
    // Across it: 3 rows of 9'-8": 3.
    expect(steel!.sheets).toBe(3);
    expect(steel!.rows).toBe(3);
    expect(steel!.insetArea / SQUARE_FOOT).toBeCloseTo((9 + 2 / 3) * (11 + 2 / 3), 6);
    expect(steel!.weight / POUND_KG).toBeCloseTo(31.5, 9);
  });

  test('one sheet that just fits is one sheet', () => {
    const job = pad(rectangle(10 + 1 / 3, 5 + 1 / 3));
    expect(meshed(job).steel).toMatchObject({ sheets: 1, rows: 1, leastByArea: 1 });
    expect(meshed(pad(rectangle(10 + 1 / 3, 5.5))).steel).toMatchObject({ sheets: 2, rows: 2 });
  });

  test.each([5, 17.3, 30, 45, 60, 71.9, 90, 135])('turned by %f° as many', (degrees) => {
    const angle = (degrees * Math.PI) / 180;
    const shapes: readonly Places[] = [
      ELL,
      rectangle(10 + 1 / 3, 5 + 1 / 3),
      // Exactly three rows and two sheets: (4'-4" × 2 + 5') + cover, 9'-4" + 10' + cover.
      rectangle(19 + 2 / 3, 14),
    ];
    for (const places of shapes) {
      const turned = places.map(
        ([x, y]) =>
          [
            x * Math.cos(angle) - y * Math.sin(angle),
            x * Math.sin(angle) + y * Math.cos(angle),
          ] as const,
      );
      const [straight, slant] = [meshed(pad(places)).steel!, meshed(pad(turned)).steel!];
      expect([slant.sheets, slant.rows, slant.pieces.length]).toEqual([
        straight.sheets,
        straight.rows,
        straight.pieces.length,
      ]);
    }
  });

  test('lie so that every place inside the cover is under one', () => {
    for (const job of [pad(ELL), jobOf([...pad(ELL).features, post('post', 5, 5, 2)])]) {
      const { steel, pour } = meshed(job);
      const { pieces } = steel!;
      const outline = pour!.pieces[0]!.rings[0]!.edges.map(({ from }) => from);
      let seen = 0;
      for (let x = 0.3; x < 23; x += 0.41) {
        for (let y = 0.3; y < 17; y += 0.37) {
          const place = { x: x * FOOT, y: y * FOOT };
          const near = [
            [-1, -1],
            [1, -1],
            [1, 1],
            [-1, 1],
          ].map(([dx, dy]) => ({ x: place.x + dx! * 2.1 * INCH, y: place.y + dy! * 2.1 * INCH }));
          // Well inside: not within the cover of an edge, nor in the post.
          if (!near.every((one) => locate(one, outline) === 'inside')) continue;
          if (Math.hypot(x - 5, y - 5) < 1.2) continue;
          seen++;
          const under = pieces.some(({ corner, angle, length, width }) => {
            const [dx, dy] = [place.x - corner.x, place.y - corner.y];
            const u = dx * Math.cos(angle) + dy * Math.sin(angle);
            const v = dy * Math.cos(angle) - dx * Math.sin(angle);
            return u >= -600 && u <= length + 600 && v >= -600 && v <= width + 600;
          });
          expect(under, `${x}, ${y}`).toBe(true);
        }
      }
      expect(seen).toBeGreaterThan(500);
    }
  });

  test('are never fewer than their area allows', () => {
    for (let long = 6; long < 40; long += 1.7) {
      for (let wide = 5; wide < 30; wide += 2.3) {
        const { sheets, leastByArea } = meshed(pad(rectangle(long, wide))).steel!;
        expect(sheets).toBeGreaterThanOrEqual(leastByArea);
      }
    }
  });

  test('a pour in two pieces has rows in each, and shares offcuts', () => {
    const apart = jobOf([
      shape('pad', 'a', rectangle(6.3, 5.3)),
      shape(
        'pad',
        'b',
        rectangle(3.3, 5.3).map(([x, y]) => [x + 20, y] as const),
      ),
    ]);
    expect(meshed(apart).steel).toMatchObject({ rows: 2, sheets: 1 });
  });
});

describe('withheld, with the reason', () => {
  test.each([
    [{ cover: 6 * FOOT }, 'mesh-no-room'],
    [{ lapSides: 5 * FOOT }, 'mesh-lap-too-wide'],
    [{ cover: -1 }, 'mesh-size'],
    [{ lapSides: 5 * FOOT - 1 }, 'mesh-too-many'],
  ] as const)('%o', (change, code) => {
    const { steel, notes } = meshed(pad(rectangle(12, 10)), change);
    expect(steel).toBeUndefined();
    expect(notes.find((note) => note.code === code)?.weight).toBe('stop');
  });
});
