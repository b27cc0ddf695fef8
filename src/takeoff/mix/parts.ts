import type { BagMix, Practices } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import { text } from '../quantity.ts';
import { type BlendPart, madeBy } from './blend.ts';

/** A mix in a blend. */
export interface MixPart extends BlendPart {
  readonly mix: BagMix;
}

/** The mixes that are poured: one, or two in parts. A mix with no parts isn't there. */
export type MixParts = readonly [MixPart] | readonly [MixPart, MixPart];

/** The parts that the practices ask for, or the note that says what stands in the way. */
export function mixParts({ mix }: Practices): MixParts | Note {
  const { main, mainParts, other, otherParts } = mix.blend;
  const asked = [
    { id: main, parts: mainParts },
    ...(other === undefined ? [] : [{ id: other, parts: otherParts }]),
  ].filter(({ parts }) => parts !== 0);
  if (
    asked.length === 0 ||
    !asked.every(({ parts }) => Number.isSafeInteger(parts * 4) && parts > 0)
  ) {
    return tradeNote('mix', 'stop', 'blend-no-parts');
  }
  const found: MixPart[] = [];
  for (const { id, parts } of asked) {
    const bag = mix.mixes.find((one) => one.id === id);
    if (!bag) return tradeNote('mix', 'stop', 'mix-not-listed', { facts: { mix: text(id) } });
    // A yield that comes to no whole cubic millimetre is none.
    if (!(madeBy([1], [{ parts: 1, yield: bag.yield }]) > 0)) {
      return tradeNote('mix', 'stop', 'bag-yield-zero', { facts: { mix: text(bag.name) } });
    }
    if (!(bag.weight > 0)) {
      return tradeNote('mix', 'stop', 'bag-weight-zero', { facts: { mix: text(bag.name) } });
    }
    found.push({ mix: bag, parts, yield: bag.yield });
  }
  const [first, second] = found as [MixPart, MixPart?];
  if (!second) return [first];
  // The same mix twice is one mix.
  if (second.mix === first.mix) return [{ ...first, parts: first.parts + second.parts }];
  return [first, second];
}
