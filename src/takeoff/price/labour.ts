import type { Job } from '../../job/job.ts';
import { TASKS, type Task } from '../../job/order.ts';
import { bidOf, orderOf } from '../../job/orderDefaults.ts';
import { CUBIC_METRE, METRE, SQUARE_METRE } from '../../units/grid.ts';
import type { Quantity } from '../figure.ts';
import type { TaskHours } from '../order/orderResult.ts';
import { area, bagVolume, count, length } from '../quantity.ts';
import type { Takeoff } from '../result.ts';

/** Every task that this job has, in the order of the day. Nothing to do isn't a task, unless hours are typed for it. */
export function labour(
  job: Job,
  takeoff: Takeoff,
  trips: number | undefined,
): readonly TaskHours[] {
  return TASKS.flatMap((task): readonly TaskHours[] => {
    const typed = bidOf(job).hours.find((one) => one.task === task)?.hours;
    const rate = orderOf(job.practices).bid.rates.find((one) => one.task === task)?.hours;
    const measured = sizeOf(task, job, takeoff, trips);
    const size = measured && { size: measured.size };
    if (typed !== undefined) return [{ task, ...size, hours: typed, from: 'typed' }];
    if (!measured) return [];
    if (rate === undefined) return [{ task, ...size, from: 'missing' }];
    return [{ task, ...size, hours: measured.units * rate, from: 'rate' }];
  });
}

/** How much of a task there is, and in what its rate is kept: metres, square or cubic metres, trips. */
function sizeOf(
  task: Task,
  job: Job,
  { pour, forms, steel, volume }: Takeoff,
  trips: number | undefined,
): { readonly size: Quantity; readonly units: number } | undefined {
  const byArea = pour && { size: area(pour.area), units: pour.area / SQUARE_METRE };
  const byForms = forms &&
    forms.total > 0 && { size: length(forms.total), units: forms.total / METRE };
  switch (task) {
    case 'base':
      return job.practices.base.depth > 0 ? byArea : undefined;
    case 'forms':
    case 'strip':
      return byForms || undefined;
    case 'steel':
      return steel?.mesh || steel?.bars ? byArea : undefined;
    case 'place':
      return volume && { size: bagVolume(volume.net), units: volume.net / CUBIC_METRE };
    case 'finish':
      return byArea;
    case 'haul':
      return trips === undefined ? undefined : { size: count(trips, 'trip'), units: trips };
    case 'other':
      return undefined;
  }
}
