import type { Figure } from '../figure.ts';
import type { NetPour } from '../outline/pour.ts';
import { area, bagVolume, length, volume } from '../quantity.ts';
import type { VolumeResult } from '../result.ts';

/** Thickness and net volume; where the forms give another depth, what that would come to. */
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
    {
      key: 'net-volume',
      role: 'net',
      value: bagVolume(slab.net),
      working: () => ({
        of: 'net-volume',
        formula: 'V = A · t',
        inputs: [
          { key: 'net-area', value: area(pour.area), from: 'figure' },
          { key: 'thickness', value: length(slab.thickness), from: 'practice' },
        ],
        rounding: 'none',
        source: ['farmers-bulletin-1279', 'geometry'],
        steps: [{ label: 'V', value: volume(slab.net) }],
      }),
    },
  ];
}

/** What the same slab comes to when the forms set its depth. */
export function formDepthFigure(pour: NetPour, slab: VolumeResult): Figure {
  return {
    key: 'form-depth-volume',
    value: bagVolume(slab.atFormDepth),
    working: () => ({
      of: 'form-depth-volume',
      formula: 'V₁ = A · d',
      inputs: [
        { key: 'net-area', value: area(pour.area), from: 'figure' },
        { key: 'form-depth', value: length(slab.formDepth), from: 'figure' },
      ],
      rounding: 'none',
      source: ['geometry'],
    }),
  };
}
