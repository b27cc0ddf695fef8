import { describe, expect, test } from 'vitest';
import { locate } from '../../../src/geometry/locate.ts';
import type { Job, Practices } from '../../../src/job/job.ts';
import { searchMesh } from '../../../src/takeoff/steel/searchMesh.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { FOOT, INCH, POUND_KG, SQUARE_FOOT } from '../../../src/units/grid.ts';
import { jobOf, type Places, post, shape } from '../outline/site.ts';
import { STEEL_TROUBLES, slab, steeled } from './steelJobs.ts';

function pad(places: Places): Job {
  return jobOf([shape('pad', 'pad', places)]);
}

function meshed(job: Job, change: Partial<Practices['steel']['mesh']> = {}) {
  const { steel } = job.practices;
  const mesh = { ...steel.mesh, ...change };
  return takeoff({ ...job, practices: { ...job.practices, steel: { ...steel, mesh } } });
}

/** What is compared of a layout. */
function countsOf({ steel }: ReturnType<typeof takeoff>) {
  const { plan, least } = steel!.mesh!;
  return {
    sheets: plan.used.length,
    rows: plan.rows,
    pieces: plan.pieces.length,
    least: least?.count,
  };
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
    const result = meshed(pad(rectangle(10, 12)));
    // Across the 12 ft: 3 rows of 9'-8", the third one 3'-0" wide: 3 sheets, and area alone asks for 3.
    expect(countsOf(result)).toEqual({ sheets: 3, rows: 3, pieces: 3, least: 3 });
    const { need, weight, plan } = result.steel!.mesh!;
    expect(plan.proof).toEqual({ is: 'least' });
    expect(need.area / SQUARE_FOOT).toBeCloseTo((9 + 2 / 3) * (11 + 2 / 3), 6);
    expect(weight / POUND_KG).toBeCloseTo(31.5, 9);
  });

  test('one sheet that just fits is one sheet', () => {
    const job = pad(rectangle(10 + 1 / 3, 5 + 1 / 3));
    expect(countsOf(meshed(job))).toEqual({ sheets: 1, rows: 1, pieces: 1, least: 1 });
    const more = meshed(pad(rectangle(10 + 1 / 3, 5.5)));
    expect(countsOf(more)).toMatchObject({ sheets: 2, rows: 2 });
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
      expect(countsOf(meshed(pad(turned)))).toMatchObject(countsOf(meshed(pad(places))));
    }
  });

  test('lie so that every place inside the cover is under one', () => {
    for (const job of [pad(ELL), jobOf([...pad(ELL).features, post('post', 5, 5, 2)])]) {
      const { steel, pour } = meshed(job);
      const { pieces } = steel!.mesh!.plan;
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

  test('a pour in two pieces has rows in each, and shares offcuts', () => {
    const apart = jobOf([
      shape('pad', 'a', rectangle(6.3, 5.3)),
      shape(
        'pad',
        'b',
        rectangle(3.3, 5.3).map(([x, y]) => [x + 20, y] as const),
      ),
    ]);
    expect(countsOf(meshed(apart))).toMatchObject({ rows: 2, sheets: 1 });
  });
});

test.each(Object.entries(STEEL_TROUBLES))('%s is said', (code, job) => {
  const { steel, notes } = takeoff(job);
  const note = notes.find((one) => one.code === code);
  expect(note).toBeDefined();
  // Chairs and dowels can be left out while the rest stays.
  const part = { 'chairs-too-many': 'chairs', 'dowels-size': 'dowels' }[code];
  if (part) expect(steel).not.toHaveProperty(part);
  else if (note!.weight === 'stop') expect(steel).toBeUndefined();
});

describe('rolls', () => {
  const roll = { id: 'r', form: 'roll' as const, length: 150 * FOOT, width: 5 * FOOT };
  const taken = (change: Partial<Practices['steel']['mesh']>) => {
    const { plan } = takeoff(steeled(slab(10, 12), { mesh: change, stock: { yard: [roll] } }))
      .steel!.mesh!;
    return { rows: plan.rows, feet: plan.cost.unrolled / FOOT };
  };
  const search = (change: Partial<Practices['steel']['mesh']>) =>
    searchMesh(
      takeoff(steeled(slab(10, 12), { mesh: change, stock: { yard: [roll] } })).steel!.mesh!
        .problem,
    )!.cost.unrolled / FOOT;

  // Worked by hand, 6 in laps: 9'-8" × 11'-8" inside the cover. Rows of 9'-8" three times is 29 ft of roll.
  test('a slab of 10 by 12 takes 29 ft in three strips, less where the third is ripped from an offcut', () => {
    const lap = { lapSides: 6 * INCH, lapEnds: 6 * INCH };
    expect(taken(lap)).toMatchObject({ rows: 3 });
    expect(taken(lap).feet).toBeLessThanOrEqual(29.01);
    expect(search(lap)).toBeLessThanOrEqual(taken(lap).feet);
  });

  test('with 3 in of cover two strips of 11\'-6" do: 9\'-6" is two widths less the lap', () => {
    const result = taken({ lapSides: 6 * INCH, lapEnds: 6 * INCH, cover: 3 * INCH });
    expect(result.rows).toBe(2);
    expect(result.feet).toBeCloseTo(23, 6);
  });
});

describe('what the truck has left', () => {
  const left = { id: 't', form: 'roll' as const, length: 23.5 * FOOT, width: 5 * FOOT, count: 1 };
  test('is laid first; only what it lacks is bought', () => {
    const { plan } = takeoff(steeled(slab(20, 12), { stock: { truck: [left] } })).steel!.mesh!;
    const without = takeoff(slab(20, 12)).steel!.mesh!.plan;
    const bought = plan.used.filter(({ from }) => from === 'yard');
    expect(bought.length).toBeLessThan(without.used.length);
    expect(plan.used.some(({ id }) => id === 't')).toBe(true);
  });
  test('may be enough: then nothing is bought, and nothing asked of the yard', () => {
    const { plan, weight, least } = takeoff(steeled(slab(10, 5), { stock: { truck: [left] } }))
      .steel!.mesh!;
    expect(plan.used.map(({ from }) => from)).toEqual(['truck']);
    expect([weight, plan.cost.price, least]).toEqual([0, 0, undefined]);
  });
});

test('prices choose between kinds, once each has one', () => {
  const yard = [
    { id: 's', form: 'sheet' as const, length: 10 * FOOT, width: 5 * FOOT, price: 1500 },
    { id: 'r', form: 'roll' as const, length: 50 * FOOT, width: 5 * FOOT, price: 6000 },
  ];
  const kinds = (prices: readonly number[]) => {
    const priced = yard.map((one, i) => ({ ...one, price: prices[i]! }));
    return takeoff(steeled(slab(20, 12), { stock: { yard: priced } })).steel!.mesh!.plan.used.map(
      ({ id }) => id,
    );
  };
  expect(new Set(kinds([1500, 60_000]))).toEqual(new Set(['s']));
  expect(new Set(kinds([1500, 1600]))).toEqual(new Set(['r']));
});

describe('ties and chairs', () => {
  test('one lap across 9\'-8": ties every 2 ft and one more', () => {
    // 10' × 9'-4" inside the cover: two rows of a sheet, one lap of 10 ft between them.
    const { mesh } = takeoff(slab(10 + 1 / 3, 9 + 2 / 3)).steel!;
    expect(mesh!.plan.rows).toBe(2);
    expect(mesh!.lapLength / FOOT).toBeCloseTo(10, 6);
    expect(mesh!.ties).toBe(6);
  });
  test('one sheet of 10 by 5: lines of five, three of them', () => {
    const { chairs, mesh } = takeoff(slab(10 + 1 / 3, 5 + 1 / 3)).steel!;
    expect(mesh!.ties).toBe(0);
    expect(chairs).toHaveLength(15);
    expect(takeoff(STEEL_TROUBLES['steel-lifted']).steel).not.toHaveProperty('chairs');
  });
  test('every chair stands in the pour inside the cover, and no place is far from one', () => {
    const { chairs, mesh } = takeoff(pad(ELL)).steel!;
    const outline = mesh!.problem.polygons[0]!.outer;
    for (const chair of chairs!) expect(locate(chair, outline)).toBe('inside');
    for (let x = 0.3; x < 23; x += 0.7) {
      for (let y = 0.3; y < 17; y += 0.7) {
        const place = { x: Math.round(x * FOOT), y: Math.round(y * FOOT) };
        if (locate(place, outline) !== 'inside') continue;
        const near = Math.min(
          ...chairs!.map((one) => Math.hypot(one.x - place.x, one.y - place.y)),
        );
        expect(near / FOOT, `${x}, ${y}`).toBeLessThan(1.5);
      }
    }
  });
});

test('a search’s answer is taken for its own problem alone', () => {
  const job = slab(20, 12);
  const { problem, key } = takeoff(job).steel!.mesh!;
  const plan = searchMesh(problem)!;
  expect(takeoff(job, { mesh: { key, plan } }).steel!.mesh!.plan).toBe(plan);
  expect(takeoff(slab(20, 11), { mesh: { key, plan } }).steel!.mesh!.plan).not.toBe(plan);
});

test('rolls and the truck’s mesh have figures of their own', () => {
  const roll = { id: 'r', form: 'roll' as const, length: 150 * FOOT, width: 5 * FOOT };
  const left = { ...roll, id: 't', length: 8 * FOOT, count: 1 };
  const job = steeled(slab(20, 12), { stock: { truck: [left], yard: [roll] } });
  const { figures } = ticketOf(job, takeoff(job), 'steel');
  const of = (key: string) => figures.find((one) => one.key === key)?.value;
  expect(of('mesh-rolls')).toMatchObject({ count: 1, unit: 'roll' });
  expect(of('mesh-truck-rolls')).toMatchObject({ count: 1, unit: 'roll' });
  expect(of('mesh-truck')).toBeUndefined();
  expect(of('mesh-sheets')).toBeUndefined();
  const { plan } = takeoff(job).steel!.mesh!;
  expect(of('mesh-unrolled')).toMatchObject({ grid: plan.cost.unrolled });
});

describe('what is bought, and what is left', () => {
  const sheet = { id: 's', form: 'sheet' as const, length: 10 * FOOT, width: 5 * FOOT };
  const tablesOf = (job: Job) =>
    new Map(ticketOf(job, takeoff(job), 'steel').tables.map((table) => [table.key, table.rows]));

  test('a sum of money where every price is known: sheets to buy times the price of one', () => {
    const job = steeled(slab(20, 12), { stock: { yard: [{ ...sheet, price: 2150 }] } });
    const { figures } = ticketOf(job, takeoff(job), 'steel');
    const of = (key: string) => figures.find((one) => one.key === key)?.value;
    const sheets = of('mesh-sheets');
    if (sheets?.of !== 'count') throw new Error('sheets');
    expect(of('mesh-money')).toMatchObject({ cents: sheets.count * 2150 });
    const [row] = tablesOf(job).get('mesh-buy')!;
    expect(row!.slice(3)).toMatchObject([
      { count: sheets.count },
      { cents: 2150 },
      { cents: sheets.count * 2150 },
    ]);
  });

  test('without a price no sum', () => {
    const job = steeled(slab(20, 12), { stock: { yard: [sheet] } });
    const { figures } = ticketOf(job, takeoff(job), 'steel');
    expect(figures.map(({ key }) => key)).not.toContain('mesh-money');
    expect(tablesOf(job).get('mesh-buy')![0]).toHaveLength(4);
  });

  test('an 8 by 4 ft pad without cover out of one sheet: 2 by 5 ft beyond, 8 ft by 1 ft beside', () => {
    const job = steeled(slab(8, 4), {
      mesh: { cover: 0, leastPiece: FOOT },
      stock: { yard: [sheet] },
    });
    const { plan } = takeoff(job).steel!.mesh!;
    const sizes = plan.rests.map(({ used, length, width }) => [used, length / FOOT, width / FOOT]);
    expect(sizes).toEqual([
      [0, 2, 5],
      [0, 8, 1],
    ]);
    expect(tablesOf(job).get('mesh-rests')).toHaveLength(2);
  });
});
