import type { OrderNoteCode } from '../../takeoff/order/keys.ts';

export const orderNotes: Readonly<Record<OrderNoteCode, string>> = {
  // In the way.
  'retarder-lap-wide':
    'Vapour retarder can’t be counted: a lap of {lap} leaves nothing of a roll {width} wide. Set the roll or the lap under practices.',
  'haul-nothing-left':
    'No trip can be planned: what rides along weighs as much as the payload or more. Look at both under practices.',
  'haul-piece-heavy':
    'No trip can be planned: one of “{what}” weighs {each}, and {most} is the most that one trip takes in one place. Have it delivered, or look at the payloads under practices.',
  'haul-trips-many':
    'No trips are planned: it would be more than a thousand. Look for a payload that was typed wrong, or have it delivered.',
  'order-too-dear':
    'A sum here is larger than any that is written. Look for a price, a count or hours that were typed wrong.',
  // Look before you build.
  'order-incomplete':
    'This list isn’t whole: a ticket before it couldn’t be figured. What stands in the way is said there. No bid is made of it.',
  'haul-below-pallet':
    'A whole pallet weighs {pallet}, more than the {most} that may be loaded. It must be split: bags go on one by one.',
  'haul-axles':
    'Trips go by payload alone. Load on each axle, tongue weight and tyres aren’t reckoned: read the stickers, spread the load low and over the axles, tie it down.',
  'spare-no-end':
    'One bag too many costs nothing, so no number of bags is enough. Say what bringing one back costs in time and fee, or that bags aren’t taken back.',
  // Taken as so.
  'order-unpriced':
    '{lines} without a price, and in no sum: {items}. Type what your yard asks, or nought for what costs nothing.',
  'order-unweighed': '{lines} of unknown weight, and in no load: {items}.',
  'order-on-truck':
    'What lies on the truck already isn’t on this list. Count its weight under what rides along.',
  'order-delivered':
    'Base is taken to be delivered: it is in no load. It is counted under the net area alone.',
  'base-means-swell':
    'A shrinkage of {share} is taken as loose = compacted × {factor}. Others write it as loose = compacted ÷ (1 − s), which is more: ask which your yard means.',
  'base-means-shrink':
    'A shrinkage of {share} is taken as loose = compacted × {factor}, which is 1 ÷ (1 − s). Others write it as loose = compacted × (1 + s), which is less: ask which your yard means.',
  'retarder-by-area':
    'Vapour retarder is counted by area and laps. Around a slab of many corners more of it is cut away.',
  'cure-by-can':
    'Curing compound is counted by one coat at your coverage. A broomed top drinks more: read the can.',
  'spare-asked':
    'No spare bags are reckoned. Type what these cost: {items}. Too few is a trip and a joint in the wrong place; too many is the way back and the yard’s fee.',
  'spare-guessed':
    'Spare bags go by a guess: {over} used beyond the net, jobs straying by {spread}. Put your own jobs in its place under practices.',
  'spare-from-jobs':
    'Spare bags go by {jobs} of your own: {over} used beyond the net, straying by {spread}.',
  'spare-covered': 'The mix ticket’s allowance already is more than it pays to take ({take}).',
  'bags-returned':
    'Whole, dry, unopened bags are taken to go back to the yard. Ask before you buy.',
  'bags-not-returned': 'Bags are taken not to go back: one too many costs its whole price.',
  'pallets-asked': 'Pallets aren’t counted: say under practices how many bags one of yours holds.',
  'ready-mix-quarter': 'Ready-mix goes up to the next quarter, never down.',
  'compare-asked':
    'Bags and truck aren’t compared yet. Type your own rates (nought where none is asked): {items}.',
  'compare-smooth':
    'Where both cost the same is reckoned with part bags and any amount of ready-mix; the costs of this job with whole bags and quarters. Placing and finishing are the same work either way and in neither.',
  'haul-asked':
    'No trips are planned: type the payload of the truck or the trailer, from its sticker.',
  'bid-asked': 'No bid yet. Type first: {items}.',
  'bid-needs-prices': 'No bid yet: {lines} without a price would make it too low.',
  'bid-before-deposit': 'The deposit for pallets, {deposit}, comes back, so it isn’t in the bid.',
};
