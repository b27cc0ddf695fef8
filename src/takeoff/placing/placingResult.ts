import type { Grid } from '../../units/grid.ts';
import type { Offer } from './offers.ts';
import type { BatchWork } from './pace.ts';
import type { Plan } from './plan.ts';
import type { Reach } from './reach.ts';

/** How the pour goes: strips, the clock, and what helps where it goes wrong. */
export interface PlacingResult extends Plan {
  /** Initial and final set of the blend at 70 °F, minutes, and whether it is the faster of two mixes'. */
  readonly set: { readonly initial: number; readonly final: number; readonly fastest: boolean };
  readonly setFactor: number;
  /** Of a full batch: hand-work, minutes to the next with all hands, and the area that it covers. */
  readonly batch: {
    readonly work: BatchWork;
    readonly minutes: number;
    readonly volume: number;
    readonly area: number;
  };
  /** The widest strip that the board in hand strikes off. */
  readonly span: Grid;
  readonly reach: Reach;
  readonly offers: readonly Offer[];
}
