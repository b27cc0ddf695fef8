import { describe, expect, test } from 'vitest';
import type { Feature } from '../../../src/job/job.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import { OUTLINE_NOTE_CODES } from '../../../src/takeoff/outline/notes.ts';
import { FOOT, SIXTEENTH } from '../../../src/units/grid.ts';
import { blockOut, jobOf, type Places, post, shape, utilityLine, wall } from './site.ts';

const PAD: Places = [
  [0, 0],
  [20, 0],
  [20, 10],
  [0, 10],
];
const pad = shape('pad', 'pad', PAD);
const AROUND: Places = [
  [-5, -5],
  [25, -5],
  [25, 15],
  [-5, 15],
];

function notesOf(features: readonly Feature[]) {
  return netPour(jobOf(features)).notes;
}

function foot(x: number, y: number) {
  return { x: x * FOOT, y: y * FOOT };
}

describe('no figure where none is true', () => {
  const bowTie: Places = [
    [0, 0],
    [4, 4],
    [4, 0],
    [0, 4],
  ];
  test.each<[string, string, Feature[], string[] | undefined]>([
    ['no pad', 'no-pad', [], undefined],
    ['only a patio', 'no-pad', [shape('existing-slab', 'patio', PAD)], undefined],
    [
      'two corners',
      'too-few-corners',
      [
        shape('pad', 'pad', [
          [0, 0],
          [5, 5],
        ]),
      ],
      ['pad'],
    ],
    ['no corners', 'too-few-corners', [shape('pad', 'pad', [])], ['pad']],
    [
      'corners on one line',
      'no-area',
      [
        shape('pad', 'pad', [
          [0, 0],
          [5, 5],
          [9, 9],
        ]),
      ],
      ['pad'],
    ],
    [
      'corners on one place',
      'no-area',
      [
        shape('pad', 'pad', [
          [1, 1],
          [1, 1],
          [1, 1],
        ]),
      ],
      ['pad'],
    ],
    ['a bow tie', 'crosses-itself', [shape('pad', 'pad', bowTie)], ['pad']],
    [
      'a crossing patio',
      'crosses-itself',
      [pad, shape('existing-slab', 'patio', bowTie)],
      ['patio'],
    ],
    ['a post without size', 'no-size', [pad, post('post', 5, 5, 0)], ['post']],
    [
      'a wall of one place',
      'no-size',
      [
        pad,
        wall(
          'w',
          [
            [3, 3],
            [3, 3],
          ],
          { closed: false },
        ),
      ],
      ['w'],
    ],
    ['a post at no place', 'broken-number', [pad, post('post', Number.NaN, 5, 1)], ['post']],
    [
      'a corner at no place',
      'broken-number',
      [
        shape('pad', 'pad', [
          [0, 0],
          [Infinity, 0],
          [5, 5],
        ]),
      ],
      ['pad'],
    ],
    [
      'an arc back to where it began',
      'arc-without-chord',
      [
        shape('pad', 'pad', [
          [0, 0, 3],
          [0, 0],
          [5, 5],
        ]),
      ],
      ['pad'],
    ],
    [
      'farther than 200 m',
      'too-large',
      [
        shape('pad', 'pad', [
          [0, 0],
          [700, 0],
          [700, 5],
        ]),
      ],
      ['pad'],
    ],
    [
      'a rise of a mile',
      'too-large',
      [
        shape('pad', 'pad', [
          [0, 0, 5280],
          [9, 0],
          [9, 5],
        ]),
      ],
      ['pad'],
    ],
    [
      'wholly in a patio',
      'pad-inside-existing-slab',
      [pad, shape('existing-slab', 'patio', AROUND)],
      ['pad', 'patio'],
    ],
    [
      'exactly a patio',
      'pad-inside-existing-slab',
      [pad, shape('existing-slab', 'patio', PAD)],
      ['pad', 'patio'],
    ],
    ['under a house', 'pad-covered', [pad, wall('house', AROUND)], ['pad', 'house']],
  ])('%s: %s', (_, code, features, about) => {
    const { pour, notes } = netPour(jobOf(features));
    expect(pour).toBeUndefined();
    expect(notes.map((note) => [note.code, note.weight])).toEqual([[code, 'stop']]);
    expect(notes[0]!.features).toEqual(about);
  });

  test('covered by two things, each only in part', () => {
    const features = [
      pad,
      shape('existing-slab', 'patio', [
        [-1, -1],
        [12, -1],
        [12, 11],
        [-1, 11],
      ]),
      wall('house', [
        [10, -1],
        [25, -1],
        [25, 11],
        [10, 11],
      ]),
    ];
    expect(notesOf(features)).toMatchObject([
      { code: 'pad-covered', features: ['pad', 'patio', 'house'] },
    ]);
  });

  test('a crossing says where', () => {
    const crossing = shape('pad', 'pad', [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ]);
    expect(notesOf([crossing])[0]!.at).toEqual([foot(2, 2)]);
  });

  test('an outline left open', () => {
    const open = { ...pad, shape: { ...pad.shape, closed: false } } as Feature;
    expect(notesOf([open])).toMatchObject([{ code: 'not-closed', features: ['pad'] }]);
  });

  test('every broken shape is named at once', () => {
    const broken = [
      shape('pad', 'a', [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ]),
      shape('steps', 'b', [
        [0, 0],
        [1, 1],
      ]),
    ];
    expect(notesOf(broken).map(({ features }) => features)).toEqual([['a'], ['b']]);
  });

  test('a job too large as a whole, its shapes each small', () => {
    const far = shape('existing-slab', 'far', [
      [900, 0],
      [905, 0],
      [905, 5],
    ]);
    expect(notesOf([pad, far])).toMatchObject([{ code: 'too-large', weight: 'stop' }]);
  });
});

describe('look before you build', () => {
  test.each<[string, string, Feature[], string[] | undefined]>([
    [
      'pads apart',
      'separate-pieces',
      [
        pad,
        shape('pad', 'b', [
          [30, 0],
          [40, 0],
          [40, 5],
        ]),
      ],
      undefined,
    ],
    [
      'pads over each other',
      'pads-overlap',
      [
        pad,
        shape('pad', 'b', [
          [15, 5],
          [25, 5],
          [25, 15],
        ]),
      ],
      ['pad', 'b'],
    ],
    ['the same pad twice', 'pads-overlap', [pad, shape('pad', 'b', PAD)], ['pad', 'b']],
    [
      'pads crossed like a plus',
      'pads-overlap',
      [
        pad,
        shape('pad', 'b', [
          [8, -5],
          [12, -5],
          [12, 15],
          [8, 15],
        ]),
      ],
      ['pad', 'b'],
    ],
    [
      'a patch alone',
      'patch-apart',
      [
        pad,
        shape('patch', 'gap', [
          [30, 0],
          [32, 0],
          [32, 2],
        ]),
      ],
      ['gap'],
    ],
    [
      'a wall line through',
      'building-line-crosses-pad',
      [
        pad,
        wall(
          'w',
          [
            [5, -5],
            [5, 15],
          ],
          { closed: false },
        ),
      ],
      ['w', 'pad'],
    ],
    [
      'a wall line into it',
      'building-line-crosses-pad',
      [
        pad,
        wall(
          'w',
          [
            [5, 5],
            [9, 5],
          ],
          { closed: false },
        ),
      ],
      ['w', 'pad'],
    ],
    ['a block-out outside', 'block-out-outside', [pad, post('post', 30, 5, 1)], ['post']],
  ])('%s: %s', (_, code, features, about) => {
    const { pour, notes } = netPour(jobOf(features));
    expect(pour).toBeDefined();
    const note = notes.find((one) => one.code === code);
    expect(note).toMatchObject({ weight: 'caution' });
    expect(note!.features).toEqual(about);
  });

  test('a wall line along the pad, or ending on it, crosses nothing', () => {
    expect(
      notesOf([
        pad,
        wall(
          'w',
          [
            [-5, 10],
            [25, 10],
          ],
          { closed: false },
        ),
      ]),
    ).toEqual([]);
    expect(
      notesOf([
        pad,
        wall(
          'w',
          [
            [5, 15],
            [5, 10],
          ],
          { closed: false },
        ),
      ]),
    ).toEqual([]);
  });

  test('a pad inside another adds nothing', () => {
    const inner = shape('pad', 'inner', [
      [5, 5],
      [6, 5],
      [6, 6],
    ]);
    expect(notesOf([pad, inner]).map(({ code }) => code)).toEqual(['pads-overlap', 'adds-nothing']);
  });

  test('a pad in a patio while another is poured is named', () => {
    const features = [
      pad,
      shape('pad', 'lost', [
        [31, 1],
        [35, 1],
        [35, 5],
      ]),
      shape('existing-slab', 'patio', [
        [30, 0],
        [40, 0],
        [40, 9],
        [30, 9],
      ]),
    ];
    expect(notesOf(features)).toMatchObject([{ code: 'adds-nothing', features: ['lost'] }]);
  });

  /*
   *   ┌──────┐  ┌──────┐
   *   │      └──┘      │   two squares held together by a neck 1/32 in wide
   *   │      ┌──┐      │
   *   └──────┘  └──────┘
   */
  test('a neck narrower than close enough says where; a wider one is nobody’s business', () => {
    const necked = (inches: number): Feature => {
      const h = inches / 12;
      return shape('pad', 'pad', [
        [0, 0],
        [5, 0],
        [5, 2],
        [7, 2],
        [7, 0],
        [12, 0],
        [12, 5],
        [7, 5],
        [7, 2 + h],
        [5, 2 + h],
        [5, 5],
        [0, 5],
      ]);
    };
    const [note] = notesOf([necked(1 / 32)]);
    expect(note).toMatchObject({ code: 'narrow-neck', weight: 'caution' });
    expect(note!.at).toContainEqual(foot(5, 2));
    expect(notesOf([necked(1)])).toEqual([]);
  });

  test('a sharp corner is not a neck', () => {
    expect(
      notesOf([
        shape('pad', 'pad', [
          [0, 0],
          [20, 0],
          [20, 0.5],
        ]),
      ]),
    ).toEqual([]);
  });

  test('a hole that touches the edge at a point leaves nothing there', () => {
    const box = blockOut('box', [
      [10, 0],
      [11, 1],
      [10, 2],
      [9, 1],
    ]);
    expect(notesOf([pad, box]).map(({ code }) => code)).toContain('narrow-neck');
  });

  /*
   *   ┌────────┬┬────────┐
   *   │ left   ││  right │    two slabs over the pad, up to 3/32 in apart: the strip between would be a piece of pour
   *   └────────┴┴────────┘
   */
  test('a strip thinner than close enough is dissolved, and told', () => {
    const gap = 3 / 32 / 12;
    const left = shape('existing-slab', 'left', [
      [-1, -1],
      [10, -1],
      [10 - gap / 4, 11],
      [-1, 11],
    ]);
    const right = shape('existing-slab', 'right', [
      [10 + gap / 4, -1],
      [19, -1],
      [19, 11],
      [10 + gap * 0.6, 11],
    ]);
    const { pour, notes } = netPour(jobOf([pad, left, right]));
    expect(pour!.area).toBe(10 * FOOT * FOOT);
    expect(pour!.slivers).toHaveLength(1);
    const [sliver] = pour!.slivers;
    expect(sliver!.area / sliver!.length).toBeLessThan(SIXTEENTH);
    expect(sliver!.length / FOOT).toBeCloseTo(10, 1);
    const note = notes.find(({ code }) => code === 'slivers-dissolved');
    expect(note).toMatchObject({ weight: 'assumption', at: [sliver!.at] });
  });

  test('a zone that is broken is named, and the pour stands', () => {
    const zone = shape('no-stake-zone', 'roots', [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ]);
    const { pour, notes } = netPour(jobOf([pad, zone]));
    expect(pour).toBeDefined();
    expect(notes).toMatchObject([{ code: 'zone-ignored', weight: 'caution', features: ['roots'] }]);
  });

  test('a buried line that can’t be read is named, and the pour stands', () => {
    const { pour, notes } = netPour(jobOf([pad, utilityLine('gas', [[0, 0]])]));
    expect(pour).toBeDefined();
    expect(notes).toMatchObject([{ code: 'line-ignored', weight: 'caution', features: ['gas'] }]);
    const whole = utilityLine('gas', [
      [0, -2],
      [20, -2],
    ]);
    expect(netPour(jobOf([pad, whole])).notes).toEqual([]);
  });
});

test('every code that is given is in the list that the words files follow', () => {
  expect(new Set(OUTLINE_NOTE_CODES).size).toBe(OUTLINE_NOTE_CODES.length);
});
