import { describe, expect, test } from 'vitest';
import type { Feature, Job } from '../../../src/job/job.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import type { NetPour, PourRing } from '../../../src/takeoff/outline/pour.ts';
import { FOOT, INCH, SIXTEENTH, SQUARE_FOOT } from '../../../src/units/grid.ts';
import { blockOut, jobOf, type Places, post, shape, wall } from './site.ts';

function poured(job: Job): NetPour {
  const { pour, notes } = netPour(job);
  if (!pour) throw new Error(notes.map(({ code }) => code).join(' '));
  return pour;
}

function codes(features: readonly Feature[]): string[] {
  return netPour(jobOf(features)).notes.map(({ code }) => code);
}

/** '6 free pad, 8 existing-slab patio': lengths in feet to a thousandth; * marks a patch edge, ~ an arc. */
function walk({ edges }: PourRing): string {
  return edges
    .map(({ length, kind, feature, patch, arc }) =>
      [
        Number((length / FOOT).toFixed(3)),
        `${kind}${patch ? '*' : ''}${arc ? '~' : ''}`,
        feature,
      ].join(' '),
    )
    .join(', ');
}

function outer(features: readonly Feature[]): string {
  return walk(poured(jobOf(features)).pieces[0]!.rings[0]!);
}

/** Feet turned about the origin by so many degrees, put on the grid once. */
function turned(places: Places, degrees: number): Places {
  const cos = Math.cos((degrees * Math.PI) / 180);
  const sin = Math.sin((degrees * Math.PI) / 180);
  return places.map(([x, y, rise]) => [x * cos - y * sin, x * sin + y * cos, rise ?? 0] as const);
}

const PAD: Places = [
  [0, 0],
  [20, 0],
  [20, 10],
  [0, 10],
];
const pad = shape('pad', 'pad', PAD);

describe('what an edge meets', () => {
  /*
   *   ┌────────────────────┐
   *   │        pad         │ 10
   *   └─────┬───────┬──────┘
   *    6    │ patio │   6
   *         └───────┘
   *             8
   */
  const PATIO: Places = [
    [6, -5],
    [14, -5],
    [14, 0],
    [6, 0],
  ];
  const said =
    '6 free pad, 8 existing-slab patio, 6 free pad, 10 free pad, 20 free pad, 10 free pad';

  test('one side of 20 ft is 6 free, 8 against the patio, 6 free', () => {
    expect(outer([pad, shape('existing-slab', 'patio', PATIO)])).toBe(said);
  });

  test.each([17.3, 45, 90, 133.7, 211.1, 300])('also turned by %d°', (degrees) => {
    const features = [
      shape('pad', 'pad', turned(PAD, degrees)),
      shape('existing-slab', 'patio', turned(PATIO, degrees)),
    ];
    expect(outer(features)).toBe(said);
    const pour = poured(jobOf(features));
    expect(Math.abs(pour.area / SQUARE_FOOT - 200)).toBeLessThan(1e-4);
    // 902 in instead of 720 is what slivers along the shared line would make of it.
    expect(Math.abs(pour.perimeter - 60 * FOOT)).toBeLessThan(10);
  });

  test('whichever way the outlines were drawn, and in whichever order', () => {
    const back = shape('existing-slab', 'patio', PATIO.toReversed());
    expect(outer([back, shape('pad', 'pad', PAD)])).toBe(said);
    expect(outer([shape('pad', 'pad', [PAD[0]!, ...PAD.slice(1).toReversed()]), back])).toBe(said);
  });

  /*
   *   ┌──────────┐
   *   │   pad    │
   *   └──────────┼───────┐
   *              │ patio │    corner on corner: nothing is met along an edge
   *              └───────┘
   */
  test('corner on corner is no contact', () => {
    const patio = shape('existing-slab', 'patio', [
      [20, -5],
      [28, -5],
      [28, 0],
      [20, 0],
    ]);
    expect(outer([pad, patio])).toBe('20 free pad, 10 free pad, 20 free pad, 10 free pad');
  });

  /*
   *   ┌───────────────┬────┐
   *   │ pad        ┌──┘    │
   *   │            │ patio │
   *   └────────────┴───────┘
   */
  test('a patio over the corner is cut out and met along both its sides', () => {
    const patio = shape('existing-slab', 'patio', [
      [15, -2],
      [30, -2],
      [30, 6],
      [15, 6],
    ]);
    expect(outer([pad, patio])).toBe(
      '15 free pad, 6 existing-slab patio, 5 existing-slab patio, 4 free pad, 20 free pad, 10 free pad',
    );
    expect(poured(jobOf([pad, patio])).area).toBe(170 * SQUARE_FOOT);
  });

  test('a wall line cuts nothing; poured against or not makes its kind', () => {
    const line: Places = [
      [-3, 10],
      [12, 10],
    ];
    const against = wall('house', line, { closed: false });
    const skirting = wall('house', line, { closed: false, pourAgainst: false });
    expect(outer([pad, against])).toBe(
      '20 free pad, 10 free pad, 8 free pad, 12 wall house, 10 free pad',
    );
    expect(outer([pad, skirting])).toContain('12 wall-formed house');
    expect(poured(jobOf([pad, against])).area).toBe(200 * SQUARE_FOOT);
  });

  test('a building footprint is cut out, and so are steps', () => {
    const house = wall('house', [
      [-5, 8],
      [25, 8],
      [25, 20],
      [-5, 20],
    ]);
    const stoop = shape('steps', 'stoop', [
      [6, 5],
      [10, 5],
      [10, 8],
      [6, 8],
    ]);
    expect(outer([pad, house, stoop])).toBe(
      '20 free pad, 8 free pad, 10 wall house, 3 steps stoop, 4 steps stoop, 3 steps stoop, 6 wall house, 8 free pad',
    );
  });

  test('where two things share a line, the later kind wins', () => {
    const patio = shape('existing-slab', 'patio', [
      [0, -5],
      [20, -5],
      [20, 0],
      [0, 0],
    ]);
    const line = wall(
      'house',
      [
        [0, 0],
        [20, 0],
      ],
      { closed: false },
    );
    const stoop = shape('steps', 'stoop', [
      [5, -3],
      [9, -3],
      [9, 0],
      [5, 0],
    ]);
    expect(outer([pad, stoop, patio, line])).toContain('20 existing-slab patio');
    expect(outer([pad, stoop, line])).toBe(
      '5 wall house, 4 steps stoop, 11 wall house, 10 free pad, 20 free pad, 10 free pad',
    );
  });

  test('a block-out inside is a hole that runs clockwise; across the edge it is a notch', () => {
    const pour = poured(
      jobOf([
        pad,
        blockOut('box', [
          [4, 4],
          [5, 4],
          [5, 6],
          [4, 6],
        ]),
      ]),
    );
    const [ring, hole] = pour.pieces[0]!.rings;
    expect(ring!.hole).toBe(false);
    expect(hole!.hole).toBe(true);
    expect(walk(hole!)).toBe('2 block-out box, 1 block-out box, 2 block-out box, 1 block-out box');
    expect(pour.area).toBe(198 * SQUARE_FOOT);
    expect(
      outer([
        pad,
        blockOut('box', [
          [4, -1],
          [5, -1],
          [5, 1],
          [4, 1],
        ]),
      ]),
    ).toBe(
      '4 free pad, 1 block-out box, 1 block-out box, 1 block-out box, 15 free pad, 10 free pad, 20 free pad, 10 free pad',
    );
  });

  test('block-outs that touch at a corner, with nothing else near, are both cut out', () => {
    const two = [
      blockOut('a', [
        [4, 4],
        [5, 4],
        [5, 5],
        [4, 5],
      ]),
      blockOut('b', [
        [5, 5],
        [6, 5],
        [6, 6],
        [5, 6],
      ]),
    ];
    const pour = poured(jobOf([pad, ...two]));
    expect(pour.area).toBe(198 * SQUARE_FOOT);
    expect(pour.lengthByKind['block-out']).toBe(8 * FOOT);
  });
});

describe('patches', () => {
  const slab: Places = [
    [20, 0],
    [40, 0],
    [40, 10],
    [20, 10],
  ];

  /*
   *   ┌───────────┬─────────┐
   *   │ pad       │   slab  │
   *   │           ├──┐      │
   *   │           │··│ 3 × 2│     a missing piece of the slab, drawn over the whole slab
   *   │           ├──┘      │
   *   └───────────┴─────────┘
   */
  test('a piece missing from the edge of a slab drawn whole', () => {
    const features = [
      pad,
      shape('existing-slab', 'slab', slab),
      shape('patch', 'gap', [
        [20, 3],
        [23, 3],
        [23, 5],
        [20, 5],
      ]),
    ];
    expect(outer(features)).toBe(
      '20 free pad, 3 existing-slab slab, 3 existing-slab* slab, 2 existing-slab* slab, 3 existing-slab* slab, 5 existing-slab slab, 20 free pad, 10 free pad',
    );
    const pour = poured(jobOf(features));
    expect(pour.area).toBe(206 * SQUARE_FOOT);
    expect(pour.grossArea).toBe(206 * SQUARE_FOOT);
    expect(pour.patchLength).toBe(8 * FOOT);
  });

  test('the same slab drawn with its notch: the same pour', () => {
    const notched: Places = [
      [20, 0],
      [40, 0],
      [40, 10],
      [20, 10],
      [20, 5],
      [23, 5],
      [23, 3],
      [20, 3],
    ];
    const gap = shape('patch', 'gap', [
      [20, 3],
      [23, 3],
      [23, 5],
      [20, 5],
    ]);
    const one = poured(jobOf([pad, shape('existing-slab', 'slab', notched), gap]));
    const two = poured(jobOf([pad, shape('existing-slab', 'slab', slab), gap]));
    expect(one).toEqual(two);
  });

  test('a broken outer corner: the sides that were the slab’s own edge are free', () => {
    const corner = shape('patch', 'gap', [
      [20, 0],
      [24, 0],
      [20, 2],
    ]);
    expect(outer([pad, shape('existing-slab', 'slab', slab), corner])).toBe(
      '20 free pad, 4 free* gap, 4.472 existing-slab* slab, 8 existing-slab slab, 20 free pad, 10 free pad',
    );
  });

  test('a patch in the middle of a slab is a piece of its own', () => {
    const hole = shape('patch', 'gap', [
      [30, 4],
      [32, 4],
      [32, 6],
      [30, 6],
    ]);
    const pour = poured(jobOf([pad, shape('existing-slab', 'slab', slab), hole]));
    expect(pour.pieces.map(({ area }) => area / SQUARE_FOOT)).toEqual([200, 4]);
    expect(walk(pour.pieces[1]!.rings[0]!)).toBe(
      '2 existing-slab* slab, 2 existing-slab* slab, 2 existing-slab* slab, 2 existing-slab* slab',
    );
  });

  test('a broken corner alone, with no pad, is a pour', () => {
    const slab = shape('existing-slab', 'patio', [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ]);
    const missing = shape('patch', 'corner', [
      [8, 8],
      [10, 8],
      [10, 10],
      [8, 10],
    ]);
    const pour = poured(jobOf([slab, missing]));
    expect(pour.area / SQUARE_FOOT).toBe(4);
    expect(pour.lengthByKind.free).toBe(4 * FOOT);
    expect(pour.lengthByKind['existing-slab']).toBe(4 * FOOT);
    expect(pour.patchLength).toBe(pour.perimeter);
  });

  test('is not poured through a building, steps or a block-out', () => {
    const features = [
      pad,
      shape('existing-slab', 'slab', slab),
      shape('patch', 'gap', [
        [20, 3],
        [23, 3],
        [23, 5],
        [20, 5],
      ]),
      blockOut('pipe', [
        [21, 3.5],
        [22, 3.5],
        [22, 4.5],
        [21, 4.5],
      ]),
    ];
    expect(poured(jobOf(features)).area).toBe(205 * SQUARE_FOOT);
  });

  test('over the pad: gross counts the overlap once', () => {
    const over = shape('patch', 'gap', [
      [18, 3],
      [23, 3],
      [23, 5],
      [18, 5],
    ]);
    const pour = poured(jobOf([pad, shape('existing-slab', 'slab', slab), over]));
    expect(pour.grossArea).toBe(206 * SQUARE_FOOT);
    expect(pour.area).toBe(206 * SQUARE_FOOT);
  });
});

describe('arcs', () => {
  test('a half-round end: exact area and length, one edge', () => {
    const rounded = shape('pad', 'pad', [
      [0, 0],
      [20, 0, 5],
      [20, 10],
      [0, 10],
    ]);
    const pour = poured(jobOf([rounded]));
    expect(pour.area / SQUARE_FOOT).toBeCloseTo(200 + (Math.PI * 25) / 2, 9);
    expect(outer([rounded])).toBe('20 free pad, 15.708 free~ pad, 20 free pad, 10 free pad');
    const arc = pour.pieces[0]!.rings[0]!.edges[1]!.arc!;
    expect(arc.radius).toBe(5 * FOOT);
    expect(arc.sweep).toBeCloseTo(Math.PI, 12);
    expect([arc.cx / FOOT, arc.cy / FOOT]).toEqual([20, 5]);
  });

  test('an arc that bites in takes away, and turns clockwise', () => {
    const bitten = shape('pad', 'pad', [
      [0, 0],
      [20, 0, -2],
      [20, 10],
      [0, 10],
    ]);
    const pour = poured(jobOf([bitten]));
    const radius = (25 + 4) / 4;
    const sweep = 4 * Math.atan2(4, 10);
    const segment = (radius ** 2 * (sweep - Math.sin(sweep))) / 2;
    expect(pour.area / SQUARE_FOOT).toBeCloseTo(200 - segment, 9);
    expect(pour.pieces[0]!.rings[0]!.edges[1]!.arc!.sweep).toBeCloseTo(-sweep, 12);
  });

  test('drawn clockwise it is the same', () => {
    const rounded = shape('pad', 'pad', [
      [0, 0],
      [20, 0, 5],
      [20, 10],
      [0, 10],
    ]);
    const back = shape('pad', 'pad', [
      [0, 0],
      [0, 10],
      [20, 10, -5],
      [20, 0],
    ]);
    expect(poured(jobOf([back])).area).toBe(poured(jobOf([rounded])).area);
    expect(poured(jobOf([back])).perimeter).toBe(poured(jobOf([rounded])).perimeter);
  });

  test('a post: two half circles round a hole of exactly its size', () => {
    const pour = poured(jobOf([pad, post('post', 10, 5, 1)]));
    expect(pour.area / SQUARE_FOOT).toBeCloseTo(200 - Math.PI / 4, 9);
    expect(walk(pour.pieces[0]!.rings[1]!)).toBe('1.571 block-out~ post, 1.571 block-out~ post');
    expect(pour.lengthByKind['block-out']).toBe(2 * Math.round((Math.PI * FOOT) / 2));
  });

  test('a post half in the edge: half of it', () => {
    const pour = poured(jobOf([pad, post('post', 10, 0, 2)]));
    expect(pour.area / SQUARE_FOOT).toBeCloseTo(200 - Math.PI / 2, 5);
    expect(outer([pad, post('post', 10, 0, 2)])).toBe(
      '9 free pad, 3.142 block-out~ post, 9 free pad, 10 free pad, 20 free pad, 10 free pad',
    );
  });

  test('a slab along the arc, from outside: the whole arc is met, and is one arc', () => {
    const rounded = shape('pad', 'pad', [
      [0, 0],
      [20, 0, 3],
      [20, 10],
      [0, 10],
    ]);
    const walk = shape('existing-slab', 'walk', [
      [20, 10, -3],
      [20, 0],
      [30, 0],
      [30, 10],
    ]);
    expect(outer([rounded, walk])).toBe(
      '20 free pad, 12.25 existing-slab~ walk, 20 free pad, 10 free pad',
    );
  });

  test('a whole round pad of two half circles', () => {
    const disc = shape('pad', 'pad', [
      [-5, 0, 5],
      [5, 0, 5],
    ]);
    const pour = poured(jobOf([disc]));
    expect(pour.area / SQUARE_FOOT).toBeCloseTo(25 * Math.PI, 9);
    expect(outer([disc])).toBe('15.708 free~ pad, 15.708 free~ pad');
  });
});

describe('close enough', () => {
  const patio = (gap: number) =>
    shape('existing-slab', 'patio', [
      [6, -5],
      [14, -5],
      [14, gap / 12],
      [6, gap / 12],
    ]);

  test.each([-1 / 16, -1 / 32, 1 / 32, 1 / 16])(
    '%d in off counts as meeting, and it says so',
    (inches) => {
      const { pour, notes } = netPour(jobOf([pad, patio(inches)]));
      expect(pour!.lengthByKind['existing-slab']).toBe(8 * FOOT);
      expect(pour!.area).toBe(200 * SQUARE_FOOT);
      const note = notes.find(({ code }) => code === 'close-enough')!;
      expect(note.weight).toBe('assumption');
      expect(note.features).toEqual(['pad', 'patio']);
      expect(note.facts).toMatchObject({ closeEnough: { of: 'length', grid: SIXTEENTH } });
    },
  );

  test('3/32 in off does not, and the setting decides', () => {
    expect(outer([pad, patio(-3 / 32)])).toBe('20 free pad, 10 free pad, 20 free pad, 10 free pad');
    const wider = netPour(jobOf([pad, patio(-3 / 32)], INCH / 8)).pour!;
    expect(wider.lengthByKind['existing-slab']).toBe(8 * FOOT);
  });

  test('an exact fit needs no assumption, at any angle', () => {
    for (const degrees of [0, 17.3, 88.1]) {
      const features = [
        shape('pad', 'pad', turned(PAD, degrees)),
        shape(
          'existing-slab',
          'patio',
          turned(
            [
              [6, -5],
              [14, -5],
              [14, 0],
              [6, 0],
            ],
            degrees,
          ),
        ),
      ];
      expect(codes(features)).toEqual([]);
    }
  });
});

describe('sums', () => {
  test('kinds add up to the perimeter, holes included, and areas to the whole', () => {
    const pour = poured(
      jobOf([
        pad,
        post('post', 10, 5, 1.1),
        shape('existing-slab', 'patio', [
          [15, -2],
          [30, -1],
          [30, 6],
          [15.5, 6],
        ]),
      ]),
    );
    const kinds = Object.values(pour.lengthByKind).reduce((sum, length) => sum + length, 0);
    expect(kinds).toBe(pour.perimeter);
    expect(pour.pieces.reduce((sum, piece) => sum + piece.area, 0)).toBe(pour.area);
    expect(pour.clip).toEqual({ engine: 'polygon-clipping', retries: 0 });
  });

  test('two pads that overlap count once, and gross as well', () => {
    const second = shape('pad', 'second', [
      [15, 5],
      [25, 5],
      [25, 15],
      [15, 15],
    ]);
    const { pour, notes } = netPour(jobOf([pad, second]));
    expect(pour!.area).toBe(275 * SQUARE_FOOT);
    expect(pour!.grossArea).toBe(275 * SQUARE_FOOT);
    expect(notes.map(({ code }) => code)).toEqual(['pads-overlap']);
  });

  test('two pads side by side make one piece with no line between', () => {
    const second = shape('pad', 'second', [
      [20, 0],
      [30, 0],
      [30, 10],
      [20, 10],
    ]);
    expect(outer([pad, second])).toBe(
      '20 free pad, 10 free second, 10 free second, 10 free second, 20 free pad, 10 free pad',
    );
    expect(codes([pad, second])).toEqual([]);
  });

  test('a corner in a straight side is not an edge of its own', () => {
    const stepped = shape('pad', 'pad', [
      [0, 0],
      [7, 0],
      [20, 0],
      [20, 10],
      [0, 10],
    ]);
    expect(outer([stepped])).toBe('20 free pad, 10 free pad, 20 free pad, 10 free pad');
  });

  test('the same job gives the same answer, and the job is not touched', () => {
    const job = jobOf([pad, post('post', 10, 5, 1)]);
    const before = structuredClone(job);
    expect(netPour(job)).toEqual(netPour(structuredClone(job)));
    expect(job).toEqual(before);
  });

  test('it is plain data', () => {
    const outcome = netPour(jobOf([pad, post('post', 10, 5, 1)]));
    expect(JSON.parse(JSON.stringify(outcome))).toEqual(outcome);
  });
});
