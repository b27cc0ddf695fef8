import { DRESSED } from '../../takeoff/forms/rules.ts';
import { dowelSize } from '../../takeoff/steel/dowels.ts';
import { type Grid, INCH } from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import type { LineStyle, Material } from '../marks.ts';
import { area, box, type Cut, type CutFrom, joinedCuts, line, type SectionKind } from './cut.ts';
import { formOf } from './freeEdge.ts';
import { lowest, slabOf, steelOf, underSlab } from './slabLayers.ts';

type Old = Extract<SectionKind, 'existing-slab' | 'wall' | 'wall-formed' | 'steps' | 'block-out'>;

interface Standing {
  readonly material: Material;
  readonly style: LineStyle;
  /** Whether it rises over the finish, or ends with it. */
  readonly rises: boolean;
}

const STANDING: Readonly<Record<Old, Standing>> = {
  'existing-slab': { material: 'old-concrete', style: 'outline', rises: false },
  wall: { material: 'building', style: 'outline', rises: true },
  'wall-formed': { material: 'building', style: 'outline', rises: true },
  steps: { material: 'old-concrete', style: 'outline', rises: true },
  'block-out': { material: 'paper', style: 'outline-block-out', rises: true },
};

/** How far a wall is shown over the finish. */
const SHOWN_ABOVE: Grid = 2 * INCH;

/**
 * The slab against what is there: strip or bond, and dowels into an older slab. How deep that goes the job doesn't know: its
 * underside is left open.
 */
export function againstOld(from: CutFrom, kind: Old): Cut {
  const { job, takeoff, left, words } = from;
  const { isolation, joints } = job.practices;
  const isFormed = kind === 'wall-formed';
  const hasStrip = takeoff.joints?.isolation.some((run) => run.kind === kind);
  const strip = hasStrip ? isolation.thickness : 0;
  const face = strip;
  const { material, style, rises } = STANDING[kind];
  const top = rises ? SHOWN_ABOVE : 0;
  const bottom = lowest(from);
  // A form stands between the slab and what can't take concrete.
  const edge = isFormed ? -DRESSED[job.practices.formBoard].thickness : 0;
  const old: Partial<Cut> = {
    areas: [area('existing', material, box(-left, edge, bottom, top))],
    lines: [
      line('existing', style, [
        { x: -left, y: top },
        { x: edge, y: top },
        { x: edge, y: bottom },
      ]),
    ],
    flags: [
      { at: { x: -left * 0.7, y: -job.practices.thickness * 0.3 }, text: words.sections.old[kind] },
    ],
  };
  return joinedCuts(kind, [
    underSlab(from, edge),
    old,
    slabOf(from, face, 0),
    strip > 0 ? stripOf(from, joints.sealant.strip) : {},
    strip === 0 && !isFormed ? bondOf(from) : {},
    isFormed ? formOf(from, false) : {},
    steelOf(from, face),
    kind === 'existing-slab' ? dowelOf(from, face) : {},
  ]);
}

function stripOf({ job, words }: CutFrom, sealed: boolean): Partial<Cut> {
  const { isolation, thickness, joints } = job.practices;
  const { thickness: wide, recess } = isolation;
  const top = -Math.min(recess, thickness);
  const hasSealant = sealed && recess > 0;
  const deep = Math.min(joints.sealant.depth, recess);
  return {
    areas: [
      area('joints', 'filler', box(0, wide, -thickness, top)),
      ...(hasSealant ? [area('joints', 'sealant', box(0, wide, -deep, 0))] : []),
    ],
    lines: [
      line('joints', 'hairline', [
        { x: 0, y: top },
        { x: wide, y: top },
      ]),
    ],
    flags: [
      {
        at: { x: wide / 2, y: (top - thickness) / 2 },
        text: words.sections.strip(formatLength(wide, job.units)),
      },
      ...(hasSealant ? [{ at: { x: wide / 2, y: -deep / 2 }, text: words.sections.sealant }] : []),
    ],
    sizes:
      recess > 0
        ? [
            {
              from: { x: 0, y: 0 },
              to: { x: 0, y: top },
              side: 'left',
              lane: 0,
            },
          ]
        : [],
  };
}

function bondOf({ job, words }: CutFrom): Partial<Cut> {
  return {
    flags: [{ at: { x: 0, y: -job.practices.thickness * 0.55 }, text: words.sections.bonded }],
  };
}

/** A dowel at half the slab's depth, half of it in the old slab. */
function dowelOf({ job, takeoff, words, right, left }: CutFrom, face: Grid): Partial<Cut> {
  if (!takeoff.steel?.dowels) return {};
  const { diameter, length, spacing } = dowelSize(job.practices);
  const y = -job.practices.thickness / 2;
  const [from, to] = [
    Math.max(-left, face / 2 - length / 2),
    Math.min(right, face / 2 + length / 2),
  ];
  const said = (grid: Grid) => formatLength(grid, job.units);
  const { set } = job.practices.steel.dowels;
  return {
    areas: [area('steel', 'steel', box(from, to, y - diameter / 2, y + diameter / 2))],
    flags: [
      {
        at: { x: Math.max(from * 0.5, -left * 0.4), y },
        text: words.sections.dowel(said(diameter), said(length), said(spacing), set),
      },
    ],
  };
}
