import type { Job, Lumber, Practices } from '../../../src/job/job.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { jobOf, type Places, shape } from '../outline/site.ts';

export type TruckRow = Omit<Lumber['truck'][number], 'id' | 'twisted'> & { twisted?: boolean };
export type YardRow = Omit<Lumber['yard'][number], 'id'>;

/** Lists of boards; rows are called t0, t1… and y0, y1… */
export function lumberOf(truck: readonly TruckRow[], yard: readonly YardRow[] = []): Lumber {
  return {
    truck: truck.map((row, i) => ({ id: `t${i}`, twisted: false, ...row })),
    yard: yard.map((row, i) => ({ id: `y${i}`, ...row })),
  };
}

export function boardJob(
  places: Places,
  lumber: Lumber,
  boards: Partial<Practices['boards']> = {},
  more: Partial<Practices> = {},
): Job {
  const job = jobOf([shape('pad', 'pad', places)]);
  const { practices } = job;
  return {
    ...job,
    lumber,
    practices: { ...practices, ...more, boards: { ...practices.boards, ...boards } },
  };
}

export const TWELVE_BY_TEN: Places = [
  [0, 0],
  [12, 0],
  [12, 10],
  [0, 10],
];

const LONG: Places = [
  [0, 0],
  [24, 0],
  [24, 6],
  [0, 6],
];

/** Two feet of one side step out by a quarter of an inch: no board is that short. */
const STEPPED: Places = [
  [0, 0],
  [6, 0],
  [6, -0.25 / 12],
  [8, -0.25 / 12],
  [8, 5],
  [0, 5],
];

const feet = (length: number, count = 9) => ({
  size: '2x4' as const,
  length: length * FOOT,
  count,
});
const sold = (length: number) => ({ size: '2x4' as const, length: length * FOOT });

/** Jobs that between them have every note about boards, by the note's code. */
export const BOARD_TROUBLES: Readonly<Record<string, Job>> = {
  'boards-none': boardJob(TWELVE_BY_TEN, lumberOf([])),
  'boards-row-wrong': boardJob(TWELVE_BY_TEN, lumberOf([feet(0)])),
  'boards-run-too-long': boardJob(LONG, lumberOf([feet(16)]), { splices: false }),
  'boards-run-no-splice': boardJob(LONG, lumberOf([feet(16)]), { cleatLength: 24 * FOOT }),
  'boards-not-enough': boardJob(LONG, lumberOf([feet(16, 2)])),
  'boards-twisted-used': boardJob(TWELVE_BY_TEN, lumberOf([{ ...feet(16), twisted: true }]), {
    useTwisted: true,
  }),
  'boards-run-short': boardJob(STEPPED, lumberOf([feet(16)])),
  'boards-spliced': boardJob(LONG, lumberOf([feet(16)])),
  'boards-twisted-left': boardJob(
    TWELVE_BY_TEN,
    lumberOf([{ ...feet(16), twisted: true }, feet(16)]),
  ),
  'boards-rip': boardJob(TWELVE_BY_TEN, lumberOf([{ ...feet(14, 3), size: '2x6' }], [sold(16)])),
};
