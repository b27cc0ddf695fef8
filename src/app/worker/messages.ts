import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Searched } from '../../takeoff/searched.ts';

/** What the page asks of the worker. */
export interface Ask {
  readonly id: number;
  readonly job: Job;
  /** What the slow searches have found; absent: as with the ask before. It may be large, and a drag asks every frame. */
  readonly searched?: Searched;
}

/** What comes back: `took` in milliseconds inside the worker; `failed` is our own fault, for the record. */
export type Answer =
  | { readonly id: number; readonly took: number; readonly takeoff: Takeoff }
  | { readonly id: number; readonly failed: string };

/**
 * What goes over the wire. A takeoff comes in parts: unpacking a large one in one go would hold the page up, so it can do
 * something else between two of them.
 */
export type Sent =
  | { readonly id: number; readonly part: Partial<Takeoff> }
  | { readonly id: number; readonly took: number }
  | { readonly id: number; readonly failed: string };
