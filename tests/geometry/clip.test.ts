import { describe, expect, test } from 'vitest';
import { doubledArea } from '../../src/geometry/area.ts';
import { type Attempt, clip, SAFE_SEQUENCE } from '../../src/geometry/clip.ts';
import type { Polygon, Ring } from '../../src/geometry/point.ts';
import { INCH } from '../../src/units/grid.ts';
import { doubledExactArea } from '../random/exactArea.ts';

/** Inches, put on the grid at the door. */
function ring(places: readonly (readonly [number, number])[]): Ring {
  return places.map(([x, y]) => ({ x: Math.round(x * INCH), y: Math.round(y * INCH) }));
}

function box(x: number, y: number, width: number, depth: number): Ring {
  return ring([
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ]);
}

function cutter(outer: Ring, ...kept: readonly Ring[]) {
  return { outer, kept };
}

function areaOf(polygons: readonly Polygon[]): number {
  const rings = polygons.flatMap(({ outer, holes }) => [outer, ...holes]);
  return rings.reduce((sum, one) => sum + doubledArea(one) / 2, 0);
}

/** Subject minus cutters, counted by slab decomposition. */
function exactDifference(subject: Ring, cutters: readonly Ring[]): number {
  const isIn = ([first, ...rest]: readonly number[]) => first !== 0 && rest.every((w) => w === 0);
  return doubledExactArea([subject, ...cutters], isIn) / 2;
}

/** Float inputs on which the library alone throws, errs by 828 in², returns nothing, and hangs. */
const BREAKING: readonly { name: string; subject: Ring; cutters: readonly Ring[] }[] = [
  {
    name: 'throws on floats',
    subject: ring([
      [211.875, 0],
      [282.5, 174.75],
      [0, 70.09375],
    ]),
    cutters: [
      ring([
        [211.875, 4e-15],
        [272.15720821064997, -24.969708210649966],
        [213.0782442591673, 9.139547530182826],
      ]),
    ],
  },
  {
    name: '828 in² too much on floats',
    subject: ring([
      [-37.58753132634146, 124.3796079013355],
      [-25.74575674230212, -157.93854241794668],
      [228.10565833941297, -197.43347482719105],
    ]),
    cutters: [
      ring([
        [-33.19359568086139, 19.62438095031261],
        [-31.01961187679143, -32.20527363679216],
        [-1.27843046352857, 20.9630557464198],
      ]),
    ],
  },
  {
    name: 'nothing left on floats',
    subject: ring([
      [83.91494984170049, 393.37069919190725],
      [126.56958450411332, 16.8415355829431],
      [501.21164124553303, 160.55100413602378],
    ]),
    cutters: [
      ring([
        [83.91494984170049, 393.37069919190725],
        [116.8569877760473, 102.57843032916554],
        [121.551819015322, 397.63434477263866],
      ]),
      ring([
        [110.40652494626248, 177.68196158044861],
        [108.46613119751225, 176.92028340754072],
        [107.6326534207439, 175.00963002848243],
        [108.39433159365178, 173.06923627973217],
      ]),
    ],
  },
  {
    name: 'hangs on floats',
    subject: ring([
      [156.86693612951785, 230.9821367962286],
      [-41.01707669905841, 495.76689513422264],
      [-75.85750582473625, 460.4287412019836],
    ]),
    cutters: [
      ring([
        [-63.27807335988999, 448.0264853831562],
        [87.14837458313829, 299.7187382315641],
        [-45.02461657153165, 466.5407081401622],
      ]),
      ring([
        [-75.85750582473625, 460.4287412019836],
        [-49.29498035794404, 434.24033906588613],
        [-30.600278847368827, 453.20211009674495],
      ]),
    ],
  },
];

describe('inputs that break the library on floats', () => {
  test.each(BREAKING)('$name: right on the grid', ({ subject, cutters }) => {
    const result = clip(
      [subject],
      cutters.map((one) => cutter(one)),
    );
    if (!result.ok) throw new Error('failed');
    const exact = exactDifference(subject, cutters);
    expect(result.value.retries).toBe(0);
    expect(Math.abs(result.value.doubledAreaUnrounded / 2 / exact - 1)).toBeLessThan(1e-9);
    // Rounded to the grid: within half a unit times the boundary, some 10 m of it here.
    expect(Math.abs(areaOf(result.value.polygons) - exact)).toBeLessThan(2 * 10 * 320_000);
  });

  test('the second has the area that was worked out by hand for its floats', () => {
    const { subject, cutters } = BREAKING[1]!;
    const result = clip(
      [subject],
      cutters.map((one) => cutter(one)),
    );
    if (!result.ok) throw new Error('failed');
    expect(areaOf(result.value.polygons) / INCH ** 2).toBeCloseTo(34771.054814, 1);
  });
});

describe('the difference', () => {
  test('outer rings run counter-clockwise, holes clockwise', () => {
    const result = clip([box(0, 0, 10, 10).toReversed()], [cutter(box(4, 4, 2, 2))]);
    if (!result.ok) throw new Error('failed');
    const [polygon] = result.value.polygons;
    expect(doubledArea(polygon!.outer)).toBe(200 * INCH ** 2);
    expect(doubledArea(polygon!.holes[0]!)).toBe(-8 * INCH ** 2);
  });

  test('what is kept in a cutter stays, also where it reaches outside it', () => {
    const cut = cutter(box(5, 0, 5, 10), box(8, 4, 6, 2));
    for (const attempt of SAFE_SEQUENCE) {
      const result = clip([box(0, 0, 20, 10)], [cut], [attempt]);
      if (!result.ok) throw new Error('failed');
      const squareInches = result.value.doubledAreaUnrounded / 2 / INCH ** 2;
      expect(squareInches).toBeCloseTo(200 - 50 + 4, attempt.grid > 1 ? 0 : 9);
    }
  });

  test('of overlapping subjects and overlapping cutters counts each place once', () => {
    const result = clip(
      [box(0, 0, 10, 10), box(5, 5, 10, 10)],
      [cutter(box(0, 0, 3, 3)), cutter(box(2, 2, 3, 3))],
    );
    if (!result.ok) throw new Error('failed');
    expect(areaOf(result.value.polygons)).toBe((175 - 17) * INCH ** 2);
  });

  test('of nothing is nothing, and of all is nothing', () => {
    expect(clip([], [])).toMatchObject({ ok: true, value: { polygons: [] } });
    expect(clip([box(1, 1, 2, 2)], [cutter(box(0, 0, 9, 9))])).toMatchObject({
      ok: true,
      value: { polygons: [] },
    });
    const flat = ring([
      [0, 0],
      [5, 5],
      [9, 9],
    ]);
    expect(clip([flat], [])).toMatchObject({ ok: true, value: { polygons: [] } });
  });

  test('far from the origin is the same as near it', () => {
    const far = (one: Ring) => one.map(({ x, y }) => ({ x: x + 5e8, y: y - 7e8 }));
    const subject = ring([
      [0, 0],
      [100, 3],
      [97, 80],
    ]);
    const cut = ring([
      [50, -10],
      [77, 11],
      [60, 90],
    ]);
    const near = clip([subject], [cutter(cut)]);
    const away = clip([far(subject)], [cutter(far(cut))]);
    if (!near.ok || !away.ok) throw new Error('failed');
    expect(areaOf(away.value.polygons)).toBe(areaOf(near.value.polygons));
    expect(away.value.polygons).toEqual(
      near.value.polygons.map((p) => ({ outer: far(p.outer), holes: [] })),
    );
  });
});

test('nothing left, where bounds would let that pass, is asked of the other library too', () => {
  const [plain, , second] = SAFE_SEQUENCE as readonly [Attempt, Attempt, Attempt];
  // Takes nearly all of the box round the pad, but little of the pad.
  const pad = ring([
    [0, 0],
    [10, 0],
    [0, 10],
  ]);
  const cut = cutter(
    ring([
      [0.5, 10],
      [10, 0.5],
      [10, 10],
    ]),
    ring([
      [8, 8],
      [9, 8],
      [9, 9],
    ]),
  );
  const result = clip([pad], [cut], [{ ...plain, engine: () => [] }, second]);
  expect(result).toMatchObject({ ok: true, value: { retries: 1, engine: 'clipper2' } });
});

describe('the safe sequence', () => {
  const throws: Attempt['engine'] = () => {
    throw new Error('Unable to complete output ring');
  };
  const [plain, coarse, second] = SAFE_SEQUENCE as readonly [Attempt, Attempt, Attempt];
  const subject = box(0, 0, 10, 10);
  const cut = cutter(box(5, 5, 10, 10));

  test('a throw is tried again on the coarser grid', () => {
    const result = clip([subject], [cut], [{ ...plain, engine: throws }, coarse, second]);
    expect(result).toMatchObject({
      ok: true,
      value: { retries: 1, grid: 16, engine: 'polygon-clipping' },
    });
  });

  test('then by the second engine, with the same area', () => {
    const broken = [plain, coarse].map((attempt) => ({ ...attempt, engine: throws }));
    const result = clip([subject], [cut], [...broken, second]);
    if (!result.ok) throw new Error('failed');
    expect(result.value).toMatchObject({ retries: 2, grid: 1, engine: 'clipper2' });
    expect(areaOf(result.value.polygons)).toBe(75 * INCH ** 2);
  });

  test.each<[string, Attempt['engine']]>([
    ['nothing at all', () => []],
    [
      'more than there was',
      () => [
        [
          [
            [-99999, -99999],
            [99999, -99999],
            [99999, 99999],
            [-99999, 99999],
          ],
        ],
      ],
    ],
    [
      'not a number',
      () => [
        [
          [
            [Number.NaN, 0],
            [5, 5],
            [9, 0],
          ],
        ],
      ],
    ],
  ])('a wrong result without an exception is caught: %s', (_, engine) => {
    const result = clip([subject], [cut], [{ ...plain, engine }, second]);
    expect(result).toMatchObject({ ok: true, value: { retries: 1, engine: 'clipper2' } });
  });

  test('when all fail there is no result, and each failure is named', () => {
    const result = clip(
      [subject],
      [cut],
      [
        { ...plain, engine: throws },
        { ...second, engine: () => [] },
      ],
    );
    expect(result).toMatchObject({
      ok: false,
      problems: [
        { code: 'clip-threw', where: 'polygon-clipping' },
        { code: 'clip-wrong-area', where: 'clipper2' },
      ],
    });
  });
});
