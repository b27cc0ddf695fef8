import type { Figure } from '../figure.ts';
import type { NetPour } from '../outline/pour.ts';
import { area, bagVolume, length, volume } from '../quantity.ts';
import type { ThickenedResult, VolumeResult } from '../result.ts';

/** Thickness and net volume, by its parts when an edge is thickened. */
export function volumeFigures(pour: NetPour, slab: VolumeResult): readonly Figure[] {
  return [
    {
      key: 'thickness',
      value: length(slab.thickness),
      working: () => ({
        of: 'thickness',
        formula: 't',
        inputs: [{ key: 'thickness', value: length(slab.thickness), from: 'practice' }],
        rounding: 'none',
        source: ['user'],
      }),
    },
    ...(slab.thickened
      ? [
          areaByThickness('slab-volume', 'V₀ = A · t', pour, slab),
          thickenedFigure(slab.thickness, slab.thickened),
          sumFigure(slab, slab.thickened),
        ]
      : [areaByThickness('net-volume', 'V = A · t', pour, slab)]),
  ];
}

function areaByThickness(
  key: 'slab-volume' | 'net-volume',
  formula: string,
  pour: NetPour,
  { slab, thickness }: VolumeResult,
): Figure {
  return {
    key,
    role: 'net',
    value: bagVolume(slab),
    working: () => ({
      of: key,
      formula,
      inputs: [
        { key: 'net-area', value: area(pour.area), from: 'figure' },
        { key: 'thickness', value: length(thickness), from: 'practice' },
      ],
      rounding: 'none',
      source: ['farmers-bulletin-1279', 'geometry'],
      steps: [{ label: 'V', value: volume(slab) }],
    }),
  };
}

function thickenedFigure(thickness: number, edge: ThickenedResult): Figure {
  const { depth, width, taper, below, flatArea, wholeArea, meanArea } = edge;
  return {
    key: 'thickened-volume',
    role: 'net',
    value: bagVolume(edge.volume),
    working: () => ({
      of: 'thickened-volume',
      formula: 'Vₑ = (D − t) · Aₘ,  Aₘ = 1/s · ∫ A(x) dx, x = w … w + s',
      inputs: [
        { key: 'edge-free', value: length(edge.length), from: 'figure' },
        { key: 'thickened-depth', value: length(depth), from: 'practice' },
        { key: 'thickness', value: length(thickness), from: 'practice' },
        { key: 'thickened-below', value: length(below), from: 'worked-out' },
        { key: 'thickened-width', value: length(width), from: 'practice' },
        { key: 'thickened-taper', value: length(taper), from: 'practice' },
        { key: 'thickened-flat-area', value: area(flatArea), from: 'worked-out' },
        { key: 'thickened-whole-area', value: area(wholeArea), from: 'worked-out' },
        { key: 'thickened-mean-area', value: area(meanArea), from: 'worked-out' },
      ],
      rounding: 'none',
      source: ['geometry', 'user'],
      steps: [{ label: 'V', value: volume(edge.volume) }],
    }),
  };
}

function sumFigure({ slab, net }: VolumeResult, edge: ThickenedResult): Figure {
  return {
    key: 'net-volume',
    role: 'net',
    value: bagVolume(net),
    working: () => ({
      of: 'net-volume',
      formula: 'V = V₀ + Vₑ',
      inputs: [
        { key: 'slab-volume', value: bagVolume(slab), from: 'figure' },
        { key: 'thickened-volume', value: bagVolume(edge.volume), from: 'figure' },
      ],
      rounding: 'none',
      source: ['geometry'],
      steps: [{ label: 'V', value: volume(net) }],
    }),
  };
}

/** What the same slab comes to when the forms set its depth. */
export function formDepthFigure(pour: NetPour, slab: VolumeResult): Figure {
  const { thickened } = slab;
  return {
    key: 'form-depth-volume',
    value: bagVolume(slab.atFormDepth),
    working: () => ({
      of: 'form-depth-volume',
      formula: thickened ? 'V₁ = A · d + (D − d) · Aₘ' : 'V₁ = A · d',
      inputs: [
        { key: 'net-area', value: area(pour.area), from: 'figure' },
        { key: 'form-depth', value: length(slab.formDepth), from: 'figure' },
        ...(thickened
          ? ([
              { key: 'thickened-depth', value: length(thickened.depth), from: 'practice' },
              { key: 'thickened-mean-area', value: area(thickened.meanArea), from: 'worked-out' },
            ] as const)
          : []),
      ],
      rounding: 'none',
      source: ['geometry'],
    }),
  };
}
