import type { Point } from '../../geometry/point.ts';
import { type Grid, INCH } from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import { area, box, breakLine, type Cut, type CutFrom, joinedCuts, line } from './cut.ts';
import { slabOf, steelOf, underSlab } from './slabLayers.ts';

/** What a saw blade takes, and how wide a groover's joint is at its foot; for the drawing. Common practice. */
const BLADE: Grid = INCH / 8;
/** Radius of a groover's shoulders; for the drawing. Common practice. */
const SHOULDER: Grid = INCH / 4;

/** A slab through a control joint: the groove or the cut by its depth, and the sealant over its backer when it is sealed. */
export function controlJoint(from: CutFrom): Cut {
  const { job, left, words } = from;
  const { thickness, joints, base } = job.practices;
  const { made, sealant } = joints;
  const deep = jointDepth(from);
  const width = sealant.joints ? sealant.width : BLADE;
  const groove =
    made === 'tooled' && !sealant.joints ? tooled(deep) : box(-width / 2, width / 2, -deep, 0);
  const isTooled = made === 'tooled';
  const said = (grid: Grid) => formatLength(grid, job.units);
  const slab = slabOf(from, -left, 0);
  const outline = base.retarder
    ? []
    : [
        line('pour', 'outline', [
          { x: -left, y: -thickness },
          { x: from.right, y: -thickness },
        ]),
      ];
  return joinedCuts('control-joint', [
    underSlab(from, -left),
    {
      areas: slab.areas ?? [],
      flags: slab.flags ?? [],
      sizes: slab.sizes ?? [],
      lines: [...outline, breakLine(-left, -thickness, 0), breakLine(from.right, -thickness, 0)],
    },
    {
      areas: [area('joints', 'paper', groove)],
      lines: [
        line('pour', 'outline', [{ x: -left, y: 0 }, ...edgeOf(groove), { x: from.right, y: 0 }]),
        // Where the slab is meant to crack.
        line('joints', 'hidden', [
          { x: 0, y: -deep },
          { x: 0, y: -thickness },
        ]),
      ],
      flags: [
        {
          at: { x: 0, y: -deep * 0.9 },
          text: isTooled ? words.sections.tooled : words.sections.sawn,
        },
        { at: { x: 0, y: -(deep + thickness) / 2 }, text: words.sections.crack },
      ],
      sizes: [{ from: { x: -left, y: 0 }, to: { x: -left, y: -deep }, side: 'left', lane: 0 }],
    },
    sealant.joints ? sealed(from, deep, said) : {},
    steelOf(from, -left),
  ]);
}

/** As deep as the takeoff says; never through the slab. */
function jointDepth({ job, takeoff }: CutFrom): Grid {
  return Math.min(job.practices.thickness, takeoff.joints?.layout?.depth ?? 0);
}

/** From the finish down one side of the groove and up the other. */
function edgeOf(groove: readonly Point[]): readonly Point[] {
  const top = groove.filter(({ y }) => y === 0);
  const [a, b] = [Math.min(...top.map(({ x }) => x)), Math.max(...top.map(({ x }) => x))];
  const low = groove.filter(({ y }) => y < 0).toSorted((p, q) => p.x - q.x);
  return [{ x: a, y: 0 }, ...low, { x: b, y: 0 }];
}

/** A groover's joint: rounded shoulders, narrowing to its foot. */
function tooled(deep: Grid): readonly Point[] {
  const half = BLADE / 2;
  const round = Math.min(SHOULDER, deep / 2);
  const side = (way: 1 | -1) =>
    Array.from({ length: 6 }, (_, i) => {
      const turn = (i * Math.PI) / 10;
      return {
        x: way * (half + round * (1 - Math.sin(turn))),
        y: i === 0 ? 0 : -round * (1 - Math.cos(turn)),
      };
    });
  return [...side(-1), { x: -half, y: -deep }, { x: half, y: -deep }, ...side(1).toReversed()];
}

function sealed({ job, words }: CutFrom, deep: Grid, said: (grid: Grid) => string): Partial<Cut> {
  const { width, depth, backer } = job.practices.joints.sealant;
  const bottom = -Math.min(depth, deep);
  // A backer rod is squeezed into its groove: as wide as that, and round.
  const room = deep + bottom;
  const rod = Math.min(width, room);
  return {
    areas: [
      area('joints', 'sealant', box(-width / 2, width / 2, bottom, 0)),
      ...(backer && rod > 0
        ? [area('joints', 'filler', box(-width / 2, width / 2, bottom - rod, bottom))]
        : []),
    ],
    flags: [
      {
        at: { x: -width * 0.2, y: bottom / 2 },
        text: words.sections.sealantSize(said(width), said(depth)),
      },
      ...(backer && rod > 0
        ? [{ at: { x: width * 0.2, y: bottom - rod / 2 }, text: words.sections.backer }]
        : []),
    ],
  };
}
