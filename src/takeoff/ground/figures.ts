import type { Figure, WorkingStep } from '../figure.ts';
import type { FigureKey } from '../keys.ts';
import { EDGE_KINDS, type EdgeKind, type NetPour } from '../outline/pour.ts';
import { area, length, text } from '../quantity.ts';

const EDGE_FIGURE: Readonly<Record<EdgeKind, FigureKey>> = {
  free: 'edge-free',
  'existing-slab': 'edge-existing-slab',
  wall: 'edge-wall',
  'wall-formed': 'edge-wall-formed',
  steps: 'edge-steps',
  'block-out': 'edge-block-out',
};

/** Net and gross area, perimeter, and the perimeter by what it meets. Kinds that aren't there have no figure. */
export function groundFigures(pour: NetPour): readonly Figure[] {
  const cut = pour.grossArea - pour.area;
  return [
    {
      key: 'net-area',
      role: 'net',
      value: area(pour.area),
      working: () => ({
        of: 'net-area',
        formula: 'A = ½ |Σ (xᵢ · yᵢ₊₁ − xᵢ₊₁ · yᵢ)| ± ½ Σ r² (θ − sin θ)',
        inputs: [],
        rounding: 'none',
        source: ['geometry', 'surveying-text-coordinate-area'],
        steps: pour.pieces.map((piece, i) => ({ label: `${i + 1}`, value: area(piece.area) })),
      }),
    },
    {
      key: 'gross-area',
      value: area(pour.grossArea),
      working: () => ({
        of: 'gross-area',
        formula: 'A₀ = ½ |Σ (xᵢ · yᵢ₊₁ − xᵢ₊₁ · yᵢ)| ± ½ Σ r² (θ − sin θ)',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'cut-out-area',
      value: area(cut),
      working: () => ({
        of: 'cut-out-area',
        formula: 'A₋ = A₀ − A',
        inputs: [
          { key: 'gross-area', value: area(pour.grossArea), from: 'figure' },
          { key: 'net-area', value: area(pour.area), from: 'figure' },
        ],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'perimeter',
      value: length(pour.perimeter),
      working: () => ({
        of: 'perimeter',
        formula: 'P = Σ l',
        inputs: kindsOf(pour).map((kind) => ({
          key: EDGE_FIGURE[kind],
          value: length(pour.lengthByKind[kind]),
          from: 'figure',
        })),
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    ...kindsOf(pour).map((kind) => edgeFigure(pour, kind)),
    ...(pour.patchLength > 0 ? [patchFigure(pour)] : []),
  ];
}

function kindsOf(pour: NetPour): readonly EdgeKind[] {
  return EDGE_KINDS.filter((kind) => pour.lengthByKind[kind] > 0);
}

function edgeFigure(pour: NetPour, kind: EdgeKind): Figure {
  const key = EDGE_FIGURE[kind];
  return {
    key,
    value: length(pour.lengthByKind[kind]),
    working: () => ({
      of: key,
      formula: 'L = Σ l',
      inputs: [],
      rounding: 'none',
      source: ['geometry'],
      steps: edgeSteps(pour, (edge) => edge.kind === kind),
    }),
  };
}

function patchFigure(pour: NetPour): Figure {
  return {
    key: 'edge-patch',
    value: length(pour.patchLength),
    working: () => ({
      of: 'edge-patch',
      formula: 'L = Σ l',
      inputs: [],
      rounding: 'none',
      source: ['geometry'],
      steps: edgeSteps(pour, ({ patch }) => patch),
    }),
  };
}

/** Each edge in the order in which the outline is walked, straights and arcs told apart. */
function edgeSteps(
  pour: NetPour,
  belongs: (edge: NetPour['pieces'][number]['rings'][number]['edges'][number]) => boolean,
): readonly WorkingStep[] {
  return pour.pieces
    .flatMap(({ rings }) => rings.flatMap(({ edges }) => edges))
    .filter(belongs)
    .map((edge, i) => ({
      label: `${i + 1}`,
      value: length(edge.length),
      ...(edge.arc
        ? {
            template: 'r · θ = {0} · {1}',
            values: [length(edge.arc.radius), text(radians(edge.arc.sweep))],
          }
        : {}),
    }));
}

function radians(sweep: number): string {
  return `${Math.abs(sweep).toFixed(4)} rad`;
}
