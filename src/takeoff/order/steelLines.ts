import type { Job } from '../../job/job.ts';
import { METRE, SQUARE_METRE } from '../../units/grid.ts';
import { length, list, tapeLength, text } from '../quantity.ts';
import type { Takeoff } from '../result.ts';
import { barOf } from '../steel/bars.ts';
import { line, type OrderLine } from './line.ts';

/** Mesh by the kinds bought, bars, ties, chairs, dowels and their sleeves. */
export function steelLines(job: Job, { steel }: Takeoff): readonly OrderLine[] {
  if (!steel) return [];
  const { mesh, bars, dowels, chairs } = steel;
  const style = job.practices.steel.mesh.style;
  const meshes = mesh
    ? job.meshStock.yard.flatMap((row) => {
        const count = mesh.plan.used.filter(
          ({ from, id }) => from === 'yard' && id === row.id,
        ).length;
        return line(job, {
          item: `mesh-${row.id}`,
          is: row.form === 'roll' ? 'order-mesh-roll' : 'order-mesh-sheet',
          named: [
            ...(style === 'own' ? [] : [text(style)]),
            list([length(row.width), length(row.length)]),
          ],
          count,
          unit: row.form,
          weight: (count * row.length * row.width * mesh.wire.weight) / SQUARE_METRE,
        });
      })
    : [];
  const { size, stockLength } = job.practices.steel.bars;
  const barCount = bars?.cuts.plan.boards.length ?? 0;
  const holes = dowels?.seams.reduce((sum, { holes: those }) => sum + those.length, 0) ?? 0;
  return [
    ...meshes,
    ...line(job, {
      item: 'bar-stock',
      is: 'order-bar',
      named: [text(size), length(stockLength)],
      count: barCount,
      unit: 'bar',
      weight: bars?.weight,
    }),
    ...line(job, {
      item: 'tie',
      is: 'order-tie',
      count: (mesh?.ties ?? 0) + (bars ? Math.ceil(bars.crossings / 2) + 2 * bars.cuts.laps : 0),
      unit: 'tie',
    }),
    ...line(job, { item: 'chair', is: 'order-chair', count: chairs?.length ?? 0, unit: 'chair' }),
    ...(dowels
      ? line(job, {
          item: 'dowel',
          is: 'order-dowel',
          named: [tapeLength(dowels.size.diameter, 16), length(dowels.size.length)],
          count: holes,
          unit: 'dowel',
          weight: dowelWeight(dowels.size.diameter, dowels.size.length) * holes,
        })
      : []),
    ...(dowels && job.practices.steel.dowels.set === 'sleeve'
      ? line(job, { item: 'sleeve', is: 'order-sleeve', count: holes, unit: 'piece' })
      : []),
  ];
}

/** kg of a round bar: as heavy for its section as the bars of the table. */
function dowelWeight(diameter: number, long: number): number {
  const one = barOf('#8');
  return one.weight * (diameter / one.diameter) ** 2 * (long / METRE);
}
