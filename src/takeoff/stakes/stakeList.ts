import type { Point } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import type { Quantity, TicketTable } from '../figure.ts';
import { length, term, text } from '../quantity.ts';
import type { FormsResult, HeldPlace, Stake, StakesResult } from '../result.ts';

/** Every place where a form is held, run by run: from where, how far along, on which side, and by what. */
export function stakeList(job: Job, forms: FormsResult, stakes: StakesResult): TicketTable {
  const places = new Map<string, (Stake | HeldPlace)[]>();
  for (const place of [...stakes.stakes, ...stakes.held]) {
    const all = places.get(place.run);
    if (all) all.push(place);
    else places.set(place.run, [place]);
  }
  const corners = lettersOf(job);
  return {
    key: 'stake-list',
    columns: ['mark', 'stake-from', 'stake-along', 'stake-side', 'stake-kind'],
    rows: forms.runs.flatMap((run) => {
      const { from } = run.edges[0]!;
      const letter = corners.get(keyOf(from));
      const start = letter === undefined ? term('run-start') : text(letter);
      return (places.get(run.mark) ?? [])
        .sort((a, b) => a.along - b.along)
        .map((place) => [
          text(run.mark),
          start,
          length(place.along),
          isInside(place) ? term('inside-form') : term('outside-form'),
          kindOf(place),
        ]);
    }),
  };
}

/** The letters of the pads' corners, by their place; with the pad's name where there are several pads. */
function lettersOf({ features }: Job): ReadonlyMap<string, string> {
  const pads = features.filter((feature) => feature.kind === 'pad');
  const letters = new Map<string, string>();
  for (const { shape, name } of pads) {
    shape.corners.forEach((corner, i) => {
      const letter = cornerLetter(i);
      letters.set(keyOf(corner), pads.length > 1 && name !== '' ? `${name} ${letter}` : letter);
    });
  }
  return letters;
}

function keyOf({ x, y }: Point): string {
  return `${x} ${y}`;
}

function isInside(place: Stake | HeldPlace): boolean {
  return 'how' in place && place.how === 'inside-stake';
}

function kindOf(place: Stake | HeldPlace): Quantity {
  if ('how' in place) return term(place.how === 'kicker' ? 'kicker-alone' : place.how);
  if (place.hand !== undefined) return term('stake-by-hand');
  return term(place.kicker ? 'stake-and-kicker' : 'stake');
}
