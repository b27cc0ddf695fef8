import type { Quantity, TicketTable } from '../figure.ts';
import { jointMark } from '../joints/marks.ts';
import { area, count, length, list, temperature, term, text, time } from '../quantity.ts';
import type { JointsResult } from '../result.ts';
import type { Offer } from './offers.ts';
import type { PlacingResult } from './placingResult.ts';
import { stripMark } from './stripMark.ts';

/** Strips in their order with the clock, and what helps where it goes wrong. */
export function placingTables(
  placing: PlacingResult,
  joints: JointsResult | undefined,
): readonly TicketTable[] {
  return [
    stripsTable(placing),
    ...(placing.offers.length > 0 ? [offersTable(placing.offers, joints)] : []),
  ];
}

function stripsTable({ strips, timeline }: PlacingResult): TicketTable {
  return {
    key: 'placing-strips',
    columns: [
      'mark',
      'strip-wide',
      'strip-rides',
      'strip-batches',
      'strip-placed',
      'strip-float',
      'strip-done',
    ],
    rows: strips.map(({ width, rides }, i) => {
      const { to, passes, done } = timeline.strips[i]!;
      const on = [...new Set(rides.flat())];
      return [
        text(stripMark(i)),
        length(width),
        list(on.map((ride) => term(`ride-${ride}`))),
        text(batchesOf(timeline.batches, timeline.strips[i]!)),
        time(to),
        time(passes[0]?.from ?? done),
        time(done),
      ];
    }),
  };
}

/** Batches that bring a strip its concrete, by number: `5–9`. */
function batchesOf(
  batches: PlacingResult['timeline']['batches'],
  { from, to }: { readonly from: number; readonly to: number },
): string {
  const first = batches.findIndex((batch) => batch.to >= from) + 1;
  const last = batches.findIndex((batch) => batch.to >= to) + 1;
  return first === last ? `${first}` : `${first}–${last}`;
}

function offersTable(offers: readonly Offer[], joints: JointsResult | undefined): TicketTable {
  return {
    key: 'placing-offers',
    columns: ['offer', 'offer-placed', 'offer-edge', 'offer-works'],
    rows: offers.map((offer) => [
      sayOffer(offer, joints),
      time(offer.placed),
      time(offer.oldest),
      term(offer.works ? 'offer-enough' : 'offer-helps'),
    ]),
  };
}

function sayOffer(offer: Offer, joints: JointsResult | undefined): Quantity {
  switch (offer.by) {
    case 'hands':
      return list([term('offer-hands'), count(offer.hands, 'hand')]);
    case 'mixer':
      return list([term('offer-mixer'), count(offer.hands, 'hand')]);
    case 'narrow':
      return list([term('offer-narrow'), length(offer.width)]);
    case 'mix':
      return list([term('offer-mix'), text(offer.name)]);
    case 'water':
      return list([term('offer-water'), temperature(offer.celsius)]);
    case 'bulkhead': {
      const all = joints?.layout?.joints ?? [];
      const marks = offer.joints.map((at) => text(jointMark(all, at)));
      return list([term('offer-bulkhead'), ...marks, ...offer.areas.map(area)]);
    }
    case 'truck':
      return term('offer-truck');
  }
}
