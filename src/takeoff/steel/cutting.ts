import type { MeshProblem, MeshSupply } from './plan.ts';
import type { Strip } from './rows.ts';

/**
 * How strips are filled. whole: whole sheets as far as they go, the end from an offcut that holds it. offcuts: offcuts
 * first, however many that joins. mixed: whole sheets, then the end from offcuts.
 */
export type Filling = 'whole' | 'offcuts' | 'mixed';

/** How strips of one layout are cut. */
export interface Cutting {
  readonly supply: readonly MeshSupply[];
  /** Lap between the pieces of a strip. */
  readonly lap: number;
  readonly leastPiece: number;
  readonly closeness: number;
  /** Which way mesh may lie: its length along the row, across it, or as it fits. */
  readonly lies: 'along' | 'across' | 'either';
}

/** A piece of a strip: from its start so far, so long, cut out of what is begun as number `used`. */
export interface CutPiece {
  readonly strip: Strip;
  readonly offset: number;
  readonly length: number;
  readonly used: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

export interface Begun {
  readonly supply: MeshSupply;
  /** Of a roll: how much of its length is used. */
  taken: number;
}

export interface CutPlan {
  readonly pieces: readonly CutPiece[];
  readonly begun: readonly Begun[];
  readonly cuts: number;
  /** What is left that is no smaller than the least piece. */
  readonly rests: readonly Rest[];
}

/** What is left of a sheet or roll, as a rectangle on it. */
export interface Rest {
  readonly used: number;
  readonly x: number;
  readonly y: number;
  readonly long: number;
  readonly wide: number;
  readonly roll: boolean;
  /** Not begun yet: where it comes from. */
  readonly fresh?: MeshSupply;
}

/** More offcuts than this at once aren't looked through: the smallest go first. Our own limit, it keeps a drag quick. */
const MOST_OFFCUTS = 120;

/**
 * Cuts strips, in the order given, out of the supply: offcuts are rectangles and are used again wherever they fit, in
 * length and across; none is kept that is smaller than the least piece. The truck's mesh goes before the yard's.
 * Nothing when the supply runs out, or none of it is as wide as a strip.
 */
export function cutStrips(
  strips: readonly Strip[],
  cutting: Cutting,
  filling: Filling,
): CutPlan | undefined {
  const yard = new Yard(cutting);
  for (const strip of strips) {
    if (!fill(strip, cutting, filling, yard)) return undefined;
  }
  return yard;
}

function fill(strip: Strip, cutting: Cutting, filling: Filling, yard: Yard): boolean {
  const { lap, closeness, leastPiece } = cutting;
  const length = strip.to - strip.from;
  let offset = 0;
  for (;;) {
    const need = Math.max(length - offset, Math.min(length, leastPiece));
    const at = length - need;
    const last = yard.holding(strip.width, need);
    const choice = filling !== 'offcuts' ? undefined : yard.longest(strip.width, need);
    const best = last ?? choice ?? freshOr(strip.width, need, filling, yard);
    if (!best) return false;
    const along = yard.along(best, strip.width);
    if (along >= need - closeness) {
      yard.cut(strip, at, Math.min(need, along), best);
      return true;
    }
    // What this leaves must be worth a piece of its own, or a lap longer.
    if (along <= lap) return false;
    yard.cut(strip, offset, along, best);
    offset += along - lap;
  }
}

function freshOr(width: number, need: number, filling: Filling, yard: Yard): Rest | undefined {
  const fresh = yard.fresh(width, need);
  if (filling !== 'mixed') return fresh;
  // A new sheet that would be cut into for the end alone can wait while offcuts make it.
  if (fresh && yard.along(fresh, width) < need) return fresh;
  return yard.longest(width, need) ?? fresh;
}

/** What is begun, what is left of it, and what can still be begun. */
class Yard implements CutPlan {
  readonly pieces: CutPiece[] = [];
  readonly begun: Begun[] = [];
  cuts = 0;
  readonly rests: Rest[] = [];
  private readonly left: number[];
  private readonly cutting: Cutting;

  constructor(cutting: Cutting) {
    this.cutting = cutting;
    this.left = cutting.supply.map(({ count }) => count ?? Number.POSITIVE_INFINITY);
  }

  /** How far along a strip of this width a rest reaches, lying the better way; 0 when it isn't wide enough. */
  along(rest: Rest, width: number): number {
    const { lies, closeness } = this.cutting;
    const straight = lies !== 'across' && rest.wide >= width - closeness ? rest.long : 0;
    const across = lies !== 'along' && rest.long >= width - closeness ? rest.wide : 0;
    return Math.max(straight, across);
  }

  /** The offcut that holds a piece and leaves the least. */
  holding(width: number, need: number): Rest | undefined {
    let best: Rest | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const rest of this.rests) {
      if (rest.long * rest.wide >= least) continue;
      if (this.along(rest, width) < need - this.cutting.closeness) continue;
      best = rest;
      least = rest.long * rest.wide;
    }
    return best;
  }

  /** The longest offcut that covers a part of what is needed, and isn't much wider. */
  longest(width: number, need: number): Rest | undefined {
    const { lap, leastPiece } = this.cutting;
    let best: Rest | undefined;
    let reach = Math.max(lap * 1.5, leastPiece - 1);
    for (const rest of this.rests) {
      const along = this.along(rest, width);
      if (along <= reach || along > need) continue;
      best = rest;
      reach = along;
    }
    return best;
  }

  /** What to begin next: of the truck what holds the piece with the least left over, or is longest; else of the yard. */
  fresh(width: number, need: number): Rest | undefined {
    const { supply, closeness, lap } = this.cutting;
    let best: Rest | undefined;
    let rank = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < supply.length; i++) {
      const one = supply[i]!;
      if (this.left[i]! <= 0) continue;
      const { length, width: wide, from, form } = one;
      const rest = { used: i, x: 0, y: 0, long: length, wide, roll: form === 'roll', fresh: one };
      const along = this.along(rest, width);
      if (along <= lap) continue;
      const holds = along >= need - closeness;
      // What holds the piece ranks by how little it leaves; what doesn't, below that, by how far it goes.
      const place = holds ? 2 - (length * wide) / (length * wide + need * width) : along / need - 1;
      const ranked = place + (from === 'truck' ? 10 : 0);
      if (ranked <= rank) continue;
      best = rest;
      rank = ranked;
    }
    return best;
  }

  /** Cuts a piece out of a rest; what is left beside it and beyond it goes back to the offcuts. */
  cut(strip: Strip, offset: number, length: number, rest: Rest): void {
    const { closeness, leastPiece } = this.cutting;
    const used = rest.fresh ? this.begin(rest.used, rest.fresh) : rest.used;
    if (!rest.fresh) this.rests.splice(this.rests.indexOf(rest), 1);
    const { x, y, long, wide, roll } = rest;
    const turned = !(
      this.cutting.lies !== 'across' &&
      wide >= strip.width - closeness &&
      long >= length - closeness
    );
    const [along, across] = turned
      ? [Math.min(strip.width, long), Math.min(length, wide)]
      : [Math.min(length, long), Math.min(strip.width, wide)];
    this.pieces.push({ strip, offset, length, used, x, y, turned });
    const begun = this.begun[used]!;
    begun.taken = roll ? Math.max(begun.taken, x + along) : begun.supply.length;
    const beyond = long - along;
    const beside = wide - across;
    this.cuts += (beyond > closeness ? 1 : 0) + (beside > closeness ? 1 : 0);
    // A roll is cut across; a sheet so that the larger of the two offcuts is as large as can be.
    const acrossFirst = roll || beyond * wide >= beside * long;
    const end = { used, x: x + along, y, long: beyond, wide: acrossFirst ? wide : across, roll };
    const side = { used, x, y: y + across, long: acrossFirst ? along : long, wide: beside };
    if (Math.min(end.long, end.wide) >= leastPiece) this.rests.push(end);
    if (Math.min(side.long, side.wide) >= leastPiece) this.rests.push({ ...side, roll: false });
    if (this.rests.length <= MOST_OFFCUTS) return;
    this.rests.sort((a, b) => b.long * b.wide - a.long * a.wide);
    this.rests.length = MOST_OFFCUTS / 2;
  }

  private begin(index: number, supply: MeshSupply): number {
    this.left[index]! -= 1;
    this.begun.push({ supply, taken: 0 });
    return this.begun.length - 1;
  }
}

/** What mesh may be cut for rows that lie across a sheet's length or along it, by the laps of the problem. */
export function cuttingOf(
  { lapEnds, lapSides, leastPiece, closeness }: MeshProblem,
  supply: readonly MeshSupply[],
  rowsAlong: boolean,
): Cutting {
  // Where ends and sides lap alike, an offcut may lie either way.
  const lies = lapEnds === lapSides ? 'either' : rowsAlong ? 'along' : 'across';
  return { supply, lap: rowsAlong ? lapEnds : lapSides, leastPiece, closeness, lies };
}
