import { type Ground, type Laid, laidWith, type Way } from './ground.ts';
import { type Judged, judged, stillNeeded } from './judge.ts';

/** Between two questions whether it is enough, layouts. */
const ASKED = 32;
/** A rule broken is worse than any joint of the slab. */
const FAR = 2 ** 40;

interface Branch {
  readonly laid: Laid;
  readonly out: Uint8Array;
  readonly judged: Judged;
  readonly rank: number;
}

/** How broadly a hunt goes from joint to joint. */
export interface Breadth {
  readonly abreast: number;
  readonly each: number;
  readonly most: number;
}

/** A hunt for the least bad, then shortest layout of the ways of a ground; what is found first serves what comes after. */
export class Hunt {
  readonly #ground: Ground;
  readonly #most: number;
  readonly #enough: () => boolean;
  #best: Laid;
  #tried = 0;
  #bad: number;
  #length: number;
  #ended = false;

  constructor(ground: Ground, most: number, enough: () => boolean) {
    this.#ground = ground;
    this.#most = most;
    this.#enough = enough;
    this.#best = ground.start;
    const { bad, length } = judged(ground, ground.start, this.#noneOut(), false);
    this.#bad = bad;
    this.#length = length;
  }

  /** The best so far, and how many were looked at. */
  get found(): { readonly ways: readonly Way[]; readonly tried: number } {
    return { ways: this.#best.ways.map((way) => this.#ground.ways[way]!), tried: this.#tried };
  }

  /** No layout can be better than the best so far. */
  get isLeast(): boolean {
    return this.#bad === 0 && this.#length === 0;
  }

  /** From one joint to the next, going on with so many of the likeliest, and from each with so many ways. */
  abreast({ abreast: width, each, most }: Breadth): void {
    const end = Math.min(this.#most, this.#tried + most);
    this.#ended = false;
    const start = this.#ground.start;
    let level = [this.#branch(start, this.#noneOut(), false)];
    while (level.length > 0) {
      const found = new Map<string, Branch>();
      for (const branch of level) {
        for (const next of this.#after(this.#likeliest(branch, each), false, end)) {
          const key = `${next.laid.ways.toSorted((a, b) => a - b)} ${next.judged.leastBad}`;
          if (!found.has(key)) found.set(key, next);
        }
      }
      level = [...found.values()].toSorted((a, b) => a.rank - b.rank).slice(0, width);
    }
  }

  /** Goes through all that may be better than the best so far. Whether it came to the end. */
  through(): boolean {
    this.#ended = this.#enough();
    const start = this.#ground.start;
    if (this.#bad > 0) {
      // First for layouts that obey alone, of which many fewer have to be looked at.
      const half = this.#tried + (this.#most - this.#tried) / 2;
      this.#follow(this.#branch(start, this.#noneOut(), true), true, half);
      if (this.#bad === 0) return !this.#ended;
      this.#ended = this.#tried >= this.#most || this.#enough();
    }
    this.#follow(
      this.#branch(start, this.#noneOut(), this.#bad === 0),
      this.#bad === 0,
      this.#most,
    );
    return !this.#ended;
  }

  #follow(branch: Branch, mustObey: boolean, end: number): void {
    // What was found meanwhile may leave nothing to be looked for here.
    const obey = mustObey || this.#bad === 0;
    const now = this.#branch(branch.laid, branch.out, obey);
    if (this.#isHopeless(now.judged, obey)) return;
    const branches = this.#after(now, obey, end);
    // Layouts with one of them are done with once it was followed: the others are followed without it, as without those
    // that were seen at once to come to nothing.
    const out = now.out.slice();
    const wayOf = ({ laid }: Branch) => (laid === now.laid ? undefined : laid.ways.at(-1));
    const followed = new Set(branches.map(wayOf));
    for (const way of now.judged.next) if (!followed.has(way)) out[way] = 1;
    for (const next of branches) {
      if (this.#ended) return;
      this.#follow({ ...next, out: out.slice() }, obey, end);
      const way = wayOf(next);
      if (way !== undefined) out[way] = 1;
    }
  }

  /** The layouts that come of one, the likeliest first: with each of the ways that mend, and with none of them. */
  #after({ laid, out, judged: own }: Branch, mustObey: boolean, end: number): readonly Branch[] {
    const branches: Branch[] = [];
    for (const way of own.next) {
      if (own.leastBad >= this.#bad && own.leastLength + own.extra[way]! >= this.#length) continue;
      if (this.#isOver(end)) return branches;
      const next = laidWith(this.#ground, laid, way);
      this.#tried++;
      const branch = this.#branch(next, out, mustObey);
      this.#offer(next, branch.judged);
      if (!this.#isHopeless(branch.judged, mustObey)) branches.push(branch);
    }
    branches.sort((a, b) => a.rank - b.rank);
    if (mustObey || own.next.length === 0) return branches;
    const without = out.slice();
    for (const way of own.next) without[way] = 1;
    const left = this.#branch(laid, without, false);
    return this.#isHopeless(left.judged, false) ? branches : [...branches, left];
  }

  /** With no more than so many of the ways to go on with: those that serve most for their length, at good angles. */
  #likeliest(branch: Branch, each: number): Branch {
    const { laid, judged: own } = branch;
    if (own.next.length <= each) return branch;
    const { ways, clash } = this.#ground;
    const rank = (way: number) => {
      const slight = laid.ways.reduce((sum, one) => sum + clash(one, way), ways[way]!.bad);
      return slight * FAR + own.extra[way]!;
    };
    const next = own.next.toSorted((a, b) => rank(a) - rank(b)).slice(0, each);
    return { ...branch, judged: { ...own, next } };
  }

  #branch(laid: Laid, out: Uint8Array, mustObey: boolean): Branch {
    const own = judged(this.#ground, laid, out, mustObey);
    const length = Math.max(own.leastLength, own.length + stillNeeded(this.#ground, laid));
    return { laid, out, judged: own, rank: own.leastBad * FAR + length };
  }

  #offer(laid: Laid, { bad, length }: Judged): void {
    if (bad > this.#bad || (bad === this.#bad && length >= this.#length)) return;
    this.#best = laid;
    this.#bad = bad;
    this.#length = length;
  }

  #isHopeless({ leastBad, leastLength }: Judged, mustObey: boolean): boolean {
    if (mustObey && leastBad > 0) return true;
    return leastBad > this.#bad || (leastBad === this.#bad && leastLength >= this.#length);
  }

  #isOver(end: number): boolean {
    if (this.#tried >= end || (this.#tried % ASKED === 0 && this.#enough())) this.#ended = true;
    return this.#ended;
  }

  #noneOut(): Uint8Array {
    return new Uint8Array(this.#ground.ways.length);
  }
}
