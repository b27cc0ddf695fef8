import type { Practices } from '../../job/job.ts';
import type { Figure, WorkingInput, WorkingStep } from '../figure.ts';
import {
  area,
  areaByLength,
  count,
  length,
  money,
  number,
  pressure,
  term,
  text,
  weight,
  weightByArea,
} from '../quantity.ts';
import type { MeshResult, SteelResult } from '../result.ts';
import { barFigures } from './barFigures.ts';
import { leastLap } from './bound.ts';
import { dowelFigures } from './dowelFigures.ts';
import type { MeshPiece, UsedMesh } from './plan.ts';
import { netCover } from './rules.ts';

/** What the steel's ticket says: mesh from the layout with the least beside it, ties, chairs, and how much steel that is. */
export function steelFigures(practices: Practices, steel: SteelResult): readonly Figure[] {
  const { mesh, bars, chairs, dowels } = steel;
  return [
    ...(mesh ? meshFigures(practices, mesh) : []),
    ...(bars ? barFigures(practices, bars) : []),
    ...(chairs ? [chairFigure(practices, chairs.length)] : []),
    ...areaFigures(practices, steel),
    ...(dowels ? dowelFigures(practices, dowels) : []),
  ];
}

function meshFigures(practices: Practices, mesh: MeshResult): readonly Figure[] {
  const { plan, need, problem } = mesh;
  const { cover } = practices.steel.mesh;
  const laps: readonly WorkingInput[] = [
    { key: 'mesh-lap-sides', value: length(problem.lapSides), from: 'practice' },
    { key: 'mesh-lap-ends', value: length(problem.lapEnds), from: 'practice' },
  ];
  const size = sizeOf(mesh);
  return [
    {
      key: 'mesh-area',
      role: 'net',
      value: area(need.area),
      working: () => ({
        of: 'mesh-area',
        formula: 'A₁ = A(c)',
        inputs: [{ key: 'mesh-cover', value: length(cover), from: 'practice' }],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'mesh-rows',
      value: count(plan.rows, 'row'),
      working: () => ({
        of: 'mesh-rows',
        formula: 'm = ⌈(B − o) ÷ (w − o)⌉',
        inputs: [...size.slice(1), ...laps.slice(0, 1)],
        rounding: 'up',
        source: ['estimating-book-mesh-lap', 'geometry'],
        steps: size.slice(1).map(({ value }) => ({
          label: 'w − o',
          value: length(netCover(value.of === 'length' ? value.grid : 0, problem.lapSides)),
          template: '{0} − {1}',
          values: [value, length(problem.lapSides)],
        })),
      }),
    },
    ...stockFigures(practices, mesh, [...size, ...laps]),
    {
      key: 'mesh-pieces',
      value: count(plan.pieces.length, 'piece'),
      working: () => ({
        of: 'mesh-pieces',
        formula: 'p = Σ p(row)',
        inputs: [{ key: 'mesh-least-piece', value: length(problem.leastPiece), from: 'practice' }],
        rounding: 'none',
        source: ['geometry'],
        steps: rowSteps(plan.pieces),
      }),
    },
    ...leastFigures(mesh, size),
    {
      key: 'mesh-weight',
      role: 'order',
      value: weight(mesh.weight),
      working: () => ({
        of: 'mesh-weight',
        formula: 'W = n · l · w · q',
        inputs: [
          ...size,
          { key: 'mesh-weight-by-area', value: weightByArea(mesh.wire.weight), from: 'practice' },
        ],
        rounding: 'none',
        source: ['welded-wire-table-1975', 'user'],
      }),
    },
    {
      key: 'steel-ties',
      value: count(mesh.ties, 'tie'),
      working: () => ({
        of: 'steel-ties',
        formula: 'Σ (⌈L(lap) ÷ s⌉ + 1)',
        inputs: [
          { key: 'lap-length', value: length(mesh.lapLength), from: 'sketch' },
          { key: 'tie-spacing', value: length(practices.steel.tieSpacing), from: 'practice' },
        ],
        rounding: 'up-each',
        source: ['common-practice'],
      }),
    },
  ];
}

/** What to buy, what is taken off rolls, and what comes from the truck. */
function stockFigures(
  { currency }: Practices,
  { plan, problem }: MeshResult,
  inputs: readonly WorkingInput[],
): readonly Figure[] {
  const yard = plan.used.filter(({ from }) => from === 'yard');
  const rolls = yard.filter(({ form }) => form === 'roll').length;
  const form = rolls > 0 ? 'roll' : 'sheet';
  const bought = {
    key: rolls > 0 ? ('mesh-rolls' as const) : ('mesh-sheets' as const),
    role: 'order' as const,
    value: count(yard.length, form),
  };
  const figures: Figure[] = [
    {
      ...bought,
      working: () => ({
        of: bought.key,
        formula: rolls > 0 ? 'n = ⌈Σ L ÷ l⌉' : 'n = Σ ⌈(L − o) ÷ (l − o)⌉ − r',
        inputs,
        rounding: 'up-each',
        source: ['geometry', 'common-practice', 'user'],
        steps: cutSteps(plan.used, plan.pieces),
      }),
    },
  ];
  if (plan.cost.unrolled > 0) {
    figures.push({
      key: 'mesh-unrolled',
      value: length(plan.cost.unrolled),
      working: () => ({
        of: 'mesh-unrolled',
        formula: 'Σ L',
        inputs,
        rounding: 'none',
        source: ['geometry'],
        steps: cutSteps(
          plan.used.filter((one) => one.form === 'roll'),
          plan.pieces,
        ),
      }),
    });
  }
  if (problem.pricedBy === 'money' && yard.length > 0) {
    figures.push({
      key: 'mesh-money',
      role: 'order',
      value: money(plan.cost.price, currency),
      working: () => ({
        of: 'mesh-money',
        formula: 'C = n · p',
        inputs: [
          { key: bought.key, value: bought.value, from: 'figure' },
          {
            key: 'price-of-one',
            value: money(plan.cost.price / yard.length, currency),
            from: 'practice',
          },
        ],
        rounding: 'none',
        source: ['user'],
      }),
    });
  }
  for (const form of ['sheet', 'roll'] as const) {
    const those = plan.used.filter((one) => one.from === 'truck' && one.form === form);
    if (those.length === 0) continue;
    const key = form === 'roll' ? 'mesh-truck-rolls' : 'mesh-truck';
    figures.push({
      key,
      value: count(those.length, form),
      working: () => ({
        of: key,
        formula: 'k',
        inputs: [],
        rounding: 'none',
        source: ['user'],
        steps: cutSteps(those, plan.pieces),
      }),
    });
  }
  return figures;
}

function leastFigures(mesh: MeshResult, size: readonly WorkingInput[]): readonly Figure[] {
  const { need, least, plan, problem } = mesh;
  if (!least) return [];
  const proof: Figure = {
    key: 'mesh-proof',
    value: term(`layout-${plan.proof.is}`),
    working: () => ({
      of: 'mesh-proof',
      formula: 'n = n₀ ?',
      inputs: [{ key: 'mesh-least', value: count(least.count, least.kind.form), from: 'figure' }],
      rounding: 'none',
      source: ['geometry'],
    }),
  };
  return [
    {
      key: 'mesh-least',
      value: count(least.count, least.kind.form),
      working: () => ({
        of: 'mesh-least',
        formula: 'n₀ = ⌈max(A₁ ÷ (l · w), A₂ ÷ ((l − o) · (w − o)))⌉',
        inputs: [
          { key: 'mesh-area', value: area(need.area), from: 'figure' },
          { key: 'mesh-lapped-area', value: area(need.lapped), from: 'sketch' },
          ...size,
          { key: 'mesh-lap-ends', value: length(leastLap(problem)), from: 'practice' },
        ],
        rounding: 'up',
        source: ['geometry'],
      }),
    },
    proof,
  ];
}

function chairFigure({ steel }: Practices, chairs: number): Figure {
  return {
    key: 'steel-chairs',
    value: count(chairs, 'chair'),
    working: () => ({
      of: 'steel-chairs',
      formula: 'Σ ⌈L(line) ÷ s⌉',
      inputs: [{ key: 'chair-spacing', value: length(steel.supports.spacing), from: 'practice' }],
      rounding: 'up-each',
      source: ['common-practice', 'geometry'],
    }),
  };
}

function areaFigures({ steel }: Practices, { drag, mesh, bars }: SteelResult): readonly Figure[] {
  if (!drag) return [];
  const { inputs } = drag;
  const style = steel.mesh.style;
  return [
    {
      key: 'steel-area',
      value: areaByLength(drag.has),
      working: () => ({
        of: 'steel-area',
        formula: 'As = a ÷ s',
        inputs: mesh
          ? [
              ...(style === 'own'
                ? []
                : [{ key: 'mesh-style' as const, value: text(style), from: 'practice' as const }]),
              { key: 'mesh-square', value: length(mesh.wire.square), from: 'practice' },
            ]
          : [
              { key: 'bar-size', value: text(steel.bars.size), from: 'practice' },
              { key: 'bar-spacing', value: length(steel.bars.spacing), from: 'practice' },
            ],
        rounding: 'none',
        source: [bars ? 'rebar-sizes' : 'welded-wire-table-1975'],
      }),
    },
    {
      key: 'drag-area',
      value: areaByLength(drag.need),
      working: () => ({
        of: 'drag-area',
        formula: 'As = F · L · w ÷ (2 · fs)',
        inputs: [
          { key: 'drag-friction', value: number(inputs.friction), from: 'practice' },
          { key: 'drag-length', value: length(steel.drag.jointLength), from: 'practice' },
          { key: 'drag-weight', value: pressure(inputs.weight), from: 'practice' },
          { key: 'drag-stress', value: pressure(inputs.stress, 'steel'), from: 'practice' },
        ],
        rounding: 'none',
        source: ['subgrade-drag-note', 'user'],
      }),
    },
  ];
}

/** Length and width of the kind of mesh that is bought. */
function sizeOf({ least }: MeshResult): readonly WorkingInput[] {
  if (!least) return [];
  return [
    { key: 'mesh-size-length', value: length(least.kind.length), from: 'practice' },
    { key: 'mesh-size-width', value: length(least.kind.width), from: 'practice' },
  ];
}

/** One step a row: its pieces, from one end to the other. */
function rowSteps(pieces: readonly MeshPiece[]): readonly WorkingStep[] {
  return grouped(pieces, ({ row }) => row).map(([row, those]) => ({
    label: `${row + 1}`,
    value: count(those.length, 'piece'),
    template: those.map((_, i) => `{${i}}`).join(' + '),
    values: those.map((piece) => length(piece.length)),
  }));
}

/** One step a sheet or roll: the lengths that are cut from it. */
function cutSteps(used: readonly UsedMesh[], pieces: readonly MeshPiece[]): readonly WorkingStep[] {
  return grouped(pieces, (piece) => piece.used)
    .filter(([at]) => used.some((one) => one.mark === at + 1))
    .map(([at, those]) => ({
      label: `${at + 1}`,
      value: count(those.length, 'piece'),
      template: those.map((_, i) => `{${i}}`).join(' + '),
      values: those.map((piece) => length(piece.length)),
    }));
}

function grouped(
  pieces: readonly MeshPiece[],
  by: (piece: MeshPiece) => number,
): readonly (readonly [number, readonly MeshPiece[]])[] {
  const groups = new Map<number, MeshPiece[]>();
  for (const piece of pieces) groups.set(by(piece), [...(groups.get(by(piece)) ?? []), piece]);
  return [...groups.entries()].sort(([a], [b]) => a - b);
}
