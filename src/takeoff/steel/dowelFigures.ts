import type { Practices } from '../../job/job.ts';
import type { Figure, TicketTable } from '../figure.ts';
import { count, length, number, tapeLength, term, text } from '../quantity.ts';
import type { DowelsResult } from '../result.ts';

/** Dowels, and how deep the holes are drilled. */
export function dowelFigures(
  { steel }: Practices,
  { size, seams }: DowelsResult,
): readonly Figure[] {
  const { dowels } = steel;
  const holes = seams.flatMap((seam) => seam.holes);
  return [
    {
      key: 'dowels',
      role: 'order',
      value: count(holes.length, 'dowel'),
      working: () => ({
        of: 'dowels',
        formula: 'Σ (⌈(L − 2e) ÷ s⌉ + 1)',
        steps: seams.map(({ mark, holes: those }) => ({
          label: mark,
          value: count(those.length, 'dowel'),
        })),
        inputs: [
          { key: 'dowel-diameter', value: tapeLength(size.diameter, 16), from: 'practice' },
          { key: 'dowel-length', value: length(size.length), from: 'practice' },
          { key: 'dowel-spacing', value: length(size.spacing), from: 'practice' },
          { key: 'dowel-from-corner', value: length(dowels.fromCorner), from: 'practice' },
          { key: 'dowel-set', value: term(`set-${dowels.set}`), from: 'practice' },
        ],
        rounding: 'up-each',
        source: dowels.by === 'table' ? ['dowel-tables'] : ['user'],
      }),
    },
    {
      key: 'dowel-hole',
      value: tapeLength(size.length / 2, 16),
      working: () => ({
        of: 'dowel-hole',
        formula: 'l ÷ 2',
        inputs: [{ key: 'dowel-length', value: length(size.length), from: 'practice' }],
        rounding: 'none',
        source: ['common-practice'],
      }),
    },
  ];
}

/** Every hole to drill, by its distance along its seam from where the seam starts. */
export function dowelHolesTable({ seams }: DowelsResult): TicketTable {
  return {
    key: 'dowel-holes',
    columns: ['seam', 'hole', 'from-start'],
    rows: seams.flatMap(({ mark, holes }) =>
      holes.map(({ along }, i) => [
        text(i === 0 ? mark : ''),
        number(i + 1),
        tapeLength(along, 16),
      ]),
    ),
  };
}
