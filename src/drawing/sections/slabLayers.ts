import type { Point } from '../../geometry/point.ts';
import type { ThickenedResult } from '../../takeoff/result.ts';
import { barOf } from '../../takeoff/steel/bars.ts';
import { wireUsed } from '../../takeoff/steel/styles.ts';
import { type Grid, INCH } from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import type { LineStyle } from '../marks.ts';
import { area, breakLine, type Cut, type CutFrom, line } from './cut.ts';

/** How much of the ground is shown under what lies in it. */
export const GROUND_SHOWN: Grid = 2.5 * INCH;

/** Where the section ends below. */
export function lowest({ job }: CutFrom, thickened?: ThickenedResult): Grid {
  const { thickness, base } = job.practices;
  return -Math.max(thickness + base.depth, thickened?.depth ?? 0) - GROUND_SHOWN;
}

/** The underside of the concrete from the edge into the pour: with a trench along the edge when that is thickened. */
export function undersideOf(
  { job, right }: CutFrom,
  from: Grid,
  thickened?: ThickenedResult,
): readonly Point[] {
  const under = -job.practices.thickness;
  if (!thickened) {
    return [
      { x: from, y: under },
      { x: right, y: under },
    ];
  }
  const { depth, width, taper } = thickened;
  return [
    { x: from, y: -depth },
    { x: width, y: -depth },
    { x: width + taper, y: under },
    { x: right, y: under },
  ];
}

/** What lies under the slab: ground, and the base and the vapour retarder when the job has them. */
export function underSlab(from: CutFrom, left: Grid, thickened?: ThickenedResult): Partial<Cut> {
  const { job, right, words } = from;
  const { thickness, base } = job.practices;
  const bottom = lowest(from, thickened);
  const underside = undersideOf(from, left, thickened);
  const ground = area('ground', 'earth', [
    ...underside,
    { x: right, y: bottom },
    { x: left, y: bottom },
  ]);
  // The base ends where the trench was dug through it.
  const start = (drop: Grid): Grid => {
    if (!thickened) return left;
    const { below, width, taper } = thickened;
    return Math.max(width, width + taper * (1 - drop / below));
  };
  const deep = thickness + base.depth;
  const stone = area('ground', 'stone', [
    { x: start(0), y: -thickness },
    { x: right, y: -thickness },
    { x: right, y: -deep },
    { x: start(base.depth), y: -deep },
  ]);
  const at = (share: number): Grid => share * right;
  return {
    areas: base.depth > 0 ? [ground, stone] : [ground],
    lines: [
      ...(base.depth > 0
        ? [
            line('ground', 'outline-block-out', [
              { x: start(base.depth), y: -deep },
              { x: right, y: -deep },
            ]),
          ]
        : []),
      ...(base.retarder ? [line('ground', 'outline-existing', underside)] : []),
    ],
    flags: [
      ...(base.retarder
        ? [{ at: { x: at(0.72), y: -thickness }, text: words.sections.retarder }]
        : []),
      ...(base.depth > 0
        ? [{ at: { x: at(0.8), y: -thickness - base.depth / 2 }, text: words.sections.base }]
        : []),
      { at: { x: at(0.88), y: -deep - GROUND_SHOWN * 0.45 }, text: words.sections.ground },
    ],
    sizes:
      base.depth > 0
        ? [
            {
              from: { x: right, y: -thickness },
              to: { x: right, y: -deep },
              side: 'right',
              lane: 1,
            },
          ]
        : [],
  };
}

/** The slab from a face into the pour, its top corner rounded when it is a free edge; it goes on past the break. */
export function slabOf(
  from: CutFrom,
  face: Grid,
  radius: Grid,
  thickened?: ThickenedResult,
): Partial<Cut> {
  const { job, right, words } = from;
  const { thickness, base } = job.practices;
  const underside = undersideOf(from, face, thickened);
  const bend = (turn: number): Point => ({
    x: face + radius * (1 - Math.cos(turn)),
    y: radius * (Math.sin(turn) - 1),
  });
  const corner =
    radius > 0
      ? Array.from({ length: 7 }, (_, i) => bend((i * Math.PI) / 12))
      : [{ x: face, y: 0 }];
  const style: LineStyle = 'outline';
  return {
    areas: [
      area('pour', 'cut-concrete', [...underside, { x: right, y: 0 }, ...corner.toReversed()]),
    ],
    lines: [
      line('pour', style, [underside[0]!, ...corner, { x: right, y: 0 }]),
      ...(base.retarder ? [] : [line('pour', style, underside)]),
      breakLine(right, -thickness, 0),
    ],
    flags: [{ at: { x: 0.56 * right, y: -thickness * 0.72 }, text: words.sections.slab }],
    sizes: [{ from: { x: right, y: 0 }, to: { x: right, y: -thickness }, side: 'right', lane: 1 }],
  };
}

/**
 * The steel from its cover on: one way along the cut, the other seen end on; on chairs when it stands on them. Nothing where
 * it would lie below the slab: the job's own note says so.
 */
export function steelOf(
  { job, right, words }: CutFrom,
  face: Grid,
  thickened?: ThickenedResult,
): Partial<Cut> {
  const { steel, thickness } = job.practices;
  const { below, by } = steel.supports;
  if (steel.kind === 'none' || below >= thickness) return {};
  const isMesh = steel.kind === 'mesh';
  const wire = wireUsed(steel.mesh);
  const cover = isMesh ? steel.mesh.cover : steel.bars.cover;
  const apart = isMesh ? wire.square : steel.bars.spacing;
  const diameter = isMesh ? wire.diameter : barOf(steel.bars.size).diameter;
  const [start, y] = [face + cover, -below];
  if (start >= right) return {};
  // Two layers: the ends are seen above the length.
  const count = Math.floor((right - start) / apart) + 1;
  const ends = Array.from({ length: count }, (_, i) => ({
    x: start + i * apart + diameter,
    y: y + diameter,
  })).filter(({ x }) => x < right - diameter);
  const foot = Math.min(1.5 * INCH, thickness - below);
  // Where the ground is as high as the chair is made for.
  const level = thickened ? thickened.width + thickened.taper + foot / 2 : start;
  const stand = Math.max(level, start) + Math.min(0.4 * apart, 0.3 * (right - level));
  const chair = line('steel', 'brace', [
    { x: stand - foot / 2, y: -thickness },
    { x: stand, y },
    { x: stand + foot / 2, y: -thickness },
  ]);
  const what = isMesh
    ? words.sections.mesh(steel.mesh.style === 'own' ? '' : steel.mesh.style)
    : words.sections.bars(steel.bars.size, formatLength(apart, job.units));
  return {
    lines: [
      line('steel', isMesh ? 'splice' : 'form', [
        { x: start, y },
        { x: right, y },
      ]),
      ...(by === 'chairs' ? [chair] : []),
    ],
    dots: ends,
    flags: [
      {
        at: { x: Math.min(start + 0.5 * (right - start), 0.44 * right), y },
        text: words.sections.steelHeld(what, by),
      },
    ],
    sizes: [{ from: { x: right, y: 0 }, to: { x: right, y }, side: 'right', lane: 0 }],
  };
}
