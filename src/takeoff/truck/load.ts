/** Something to haul, piece by piece. */
export interface HaulItem {
  /** Whose it is: the caller's own number. */
  readonly of: number;
  readonly count: number;
  /** Micrograms of one, whole: a pound is a whole number of them, and so is a kilogram. */
  readonly each: number;
}

export interface HaulRoom {
  readonly on: 'truck' | 'trailer';
  /** Micrograms, whole, more than nothing. */
  readonly room: number;
}

export interface LoadedPart {
  readonly on: HaulRoom['on'];
  readonly items: readonly { readonly of: number; readonly count: number }[];
  /** Micrograms. */
  readonly weight: number;
}

export interface HaulPlan {
  /** Each trip's parts, empty ones left out. */
  readonly trips: readonly (readonly LoadedPart[])[];
  /** No plan has fewer: the weight of it all, and the pieces that need a place of their own. */
  readonly least: number;
}

/** More trips than this are a delivery's job, or a number typed wrong. Our own limit. */
export const MOST_TRIPS = 1_000;

/**
 * Trips for all of it: the heaviest pieces first, each on the first trip that still has room for it. A pallet is split
 * wherever that helps: bags are loaded one by one.
 * @returns nothing when a piece is too heavy for any of the rooms, or when there are too many trips
 */
export function haul(items: readonly HaulItem[], rooms: readonly HaulRoom[]): HaulPlan | undefined {
  const widest = Math.max(0, ...rooms.map(({ room }) => room));
  if (items.some(({ each }) => each > widest)) return undefined;
  const least = leastTrips(items, rooms);
  if (least > MOST_TRIPS) return undefined;
  const bins: { trip: number; on: HaulRoom['on']; left: number; items: Map<number, number> }[] = [];
  const sorted = items.filter(({ count }) => count > 0).toSorted((a, b) => b.each - a.each);
  let trips = 0;
  for (const { of, count, each } of sorted) {
    let left = count;
    for (let at = 0; left > 0; at++) {
      if (at === bins.length) {
        if (trips === MOST_TRIPS) return undefined;
        bins.push(
          ...rooms.map(({ on, room }) => ({ trip: trips, on, left: room, items: new Map() })),
        );
        trips++;
      }
      const bin = bins[at]!;
      const taken = each === 0 ? left : Math.min(left, Math.floor(bin.left / each));
      if (taken === 0) continue;
      bin.left -= taken * each;
      bin.items.set(of, (bin.items.get(of) ?? 0) + taken);
      left -= taken;
    }
  }
  const room = (on: HaulRoom['on']) => rooms.find((one) => one.on === on)!.room;
  return {
    least,
    trips: Array.from({ length: trips }, (_, trip) =>
      bins
        .filter((bin) => bin.trip === trip && bin.items.size > 0)
        .map((bin) => ({
          on: bin.on,
          weight: room(bin.on) - bin.left,
          items: [...bin.items].map(([of, count]) => ({ of, count })),
        })),
    ),
  };
}

/** By weight, and by how many of the larger pieces one trip takes at most. */
function leastTrips(items: readonly HaulItem[], rooms: readonly HaulRoom[]): number {
  const all = rooms.reduce((sum, { room }) => sum + room, 0);
  const weight = items.reduce((sum, { count, each }) => sum + count * each, 0);
  if (weight === 0) return items.some(({ count }) => count > 0) ? 1 : 0;
  // Of the pieces at least as heavy as this, a trip takes no more than if all were as light as it.
  const bySize = items.map(({ each }) => {
    const those = items.filter((one) => one.each >= each);
    const pieces = those.reduce((sum, { count }) => sum + count, 0);
    const most = rooms.reduce((sum, { room }) => sum + Math.floor(room / each), 0);
    return each === 0 ? 0 : Math.ceil(pieces / most);
  });
  return Math.max(Math.ceil(weight / all), ...bySize);
}
