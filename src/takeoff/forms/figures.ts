import type { Practices } from '../../job/job.ts';
import type { Figure, TicketTable } from '../figure.ts';
import { count, length, number, term, text } from '../quantity.ts';
import type { FormsResult, StakesResult } from '../result.ts';
import { DRESSED, formDepth } from './rules.ts';

/** Depth that the form gives, and the length of form in all. */
export function formFigures(practices: Practices, forms: FormsResult): readonly Figure[] {
  const { formBoard, gapUnderForm } = practices;
  return [
    {
      key: 'form-length',
      role: 'net',
      value: length(forms.total),
      working: () => ({
        of: 'form-length',
        formula: 'L = Σ R',
        inputs: [{ key: 'form-corners', value: count(forms.corners, 'corner'), from: 'sketch' }],
        rounding: 'none',
        source: ['geometry'],
        steps: forms.runs.map((run) => ({ label: run.mark, value: length(run.length) })),
      }),
    },
    {
      key: 'form-depth',
      value: length(formDepth(formBoard, gapUnderForm)),
      working: () => ({
        of: 'form-depth',
        formula: 'd = b + g',
        inputs: [
          { key: 'board-depth', value: length(DRESSED[formBoard].depth), from: 'published' },
          { key: 'gap-under-form', value: length(gapUnderForm), from: 'practice' },
        ],
        rounding: 'none',
        source: ['ps-20-lumber-sizes', 'user'],
      }),
    },
  ];
}

/** One row a form run; with its stakes when they could be figured. */
export function runsTable(forms: FormsResult, stakes: StakesResult | undefined): TicketTable {
  const staked = new Map(stakes?.byRun.map((run) => [run.run, run]));
  return {
    key: 'runs',
    columns: stakes
      ? ['mark', 'meets', 'shape', 'length', 'stakes', 'held', 'gap', 'most-apart']
      : ['mark', 'meets', 'shape', 'length'],
    rows: forms.runs.map((run) => {
      const at = staked.get(run.mark);
      return [
        text(run.mark),
        term(run.kind),
        term(run.curved ? 'curved' : 'straight'),
        length(run.length),
        ...(at
          ? [
              count(at.count - at.held, 'stake'),
              at.held > 0 ? number(at.held) : text('–'),
              at.gap > 0 ? length(at.gap) : text('–'),
              length(at.spacing),
            ]
          : []),
      ];
    }),
  };
}
