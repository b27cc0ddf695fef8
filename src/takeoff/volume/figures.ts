import type { Figure, WorkingInput } from '../figure.ts';
import type { NetPour } from '../outline/pour.ts';
import { area, bagVolume, count, length, share, volume } from '../quantity.ts';
import type { GroundDepth, ThickenedResult, VolumeResult } from '../result.ts';

/** Thickness and net volume, by its parts when an edge is thickened. */
export function volumeFigures(pour: NetPour, slab: VolumeResult): readonly Figure[] {
  return [
    {
      key: 'thickness',
      value: length(slab.thickness),
      working: () => ({
        of: 'thickness',
        formula: 't',
        inputs: [thicknessInput(slab)],
        rounding: 'none',
        source: ['user'],
      }),
    },
    ...(slab.ground ? groundFigures(slab.ground) : []),
    ...(slab.thickened
      ? [
          areaByThickness('slab-volume', 'V₀ = A · t', pour, slab),
          thickenedFigure(slab.thickness, slab.thickened),
          sumFigure(slab, slab.thickened),
        ]
      : [areaByThickness('net-volume', 'V = A · t', pour, slab)]),
  ];
}

/** The mean of the taped depths, and what it may be off by. */
function groundFigures({ readings, mean, deviation, error }: GroundDepth): readonly Figure[] {
  const many: WorkingInput = {
    key: 'readings',
    value: count(readings.length, 'reading'),
    from: 'sketch',
  };
  return [
    {
      key: 'ground-depth',
      value: length(mean),
      working: () => ({
        of: 'ground-depth',
        formula: 'd̄ = Σ w · d',
        inputs: [many],
        rounding: 'none',
        source: ['geometry', 'user'],
        steps: readings.map(({ depth, weight }, i) => ({
          label: `d${i + 1}`,
          value: length(depth),
          template: '{0} × {1}',
          values: [share(weight), length(depth)],
        })),
      }),
    },
    {
      key: 'ground-spread',
      value: length(error),
      working: () => ({
        of: 'ground-spread',
        formula: 's = max(√(Σ w · (d − d̄)² · n ÷ (n − 1)), s₀) · √(Σ w²)',
        inputs: [
          many,
          { key: 'ground-depth', value: length(mean), from: 'figure' },
          { key: 'reading-deviation', value: length(deviation), from: 'worked-out' },
        ],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
  ];
}

function thicknessInput({ thickness, depthBy }: VolumeResult): WorkingInput {
  return depthBy === 'readings'
    ? { key: 'ground-depth', value: length(thickness), from: 'figure' }
    : { key: 'thickness', value: length(thickness), from: 'practice' };
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
        { key: 'thickness', value: length(thickness), from: 'figure' },
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
        { key: 'thickness', value: length(thickness), from: 'figure' },
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
