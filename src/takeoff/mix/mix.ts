import type { Practices } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import { bagYield, count, share, text, weight } from '../quantity.ts';
import type { BagCount, Batching, MixResult, VolumeResult } from '../result.ts';
import { loads } from './batches.ts';
import { fewestBags, madeBy, meanYield } from './blend.ts';
import { type MixParts, mixParts } from './parts.ts';
import { MOST_BAGS, ONE_PERSON_LIFT, wholeVolume } from './rules.ts';

/**
 * Bags for a pour: the net volume, an allowance on a line of its own (the larger of a share of the net and a count of
 * bags: on small jobs a share comes to less than a bag), the fewest whole bags that make both, and what rounding up to
 * them adds. net + allowance + rounding = made, exactly.
 * @source navedtra-14070-estimate
 * @source bag-yields
 */
export function mix(practices: Practices, slab: VolumeResult): Figured<MixResult> {
  const { waste } = practices;
  if (!(waste.share >= 0 && waste.minimumBags >= 0)) {
    return withheld(tradeNote('mix', 'stop', 'waste-below-zero'));
  }
  const blend = mixParts(practices);
  if ('code' in blend) return withheld(blend);
  const byShare = wholeVolume(slab.net * waste.share);
  const byBags = wholeVolume(waste.minimumBags * meanYield(blend));
  const net = wholeVolume(slab.net);
  const allowance = Math.max(byShare, byBags);
  const needed = net + allowance;
  if (needed / meanYield(blend) > MOST_BAGS) {
    return withheld(
      tradeNote('mix', 'stop', 'bags-too-many', { facts: { most: count(MOST_BAGS, 'bag') } }),
    );
  }
  const bags = fewestBags(needed, blend);
  const made = madeBy(bags, blend);
  const batching = batchingOf(bags, blend, practices.mix.batchVolume);
  return {
    figured: {
      net,
      allowance,
      allowanceBy: allowance === 0 ? 'none' : byBags > byShare ? 'minimum-bags' : 'share',
      needed,
      bags: bagCounts(bags, blend),
      totalBags: bags.reduce((sum, each) => sum + each, 0),
      made,
      rounding: made - needed,
      weight: blend.reduce((sum, part, i) => sum + bags[i]! * part.mix.weight, 0),
      ...(batching ? { batching } : {}),
    },
    notes: mixNotes(practices, blend, batching),
  };
}

function bagCounts(bags: readonly number[], blend: MixParts): readonly BagCount[] {
  return blend.map((part, i) => ({ mix: part.mix.id, parts: part.parts, bags: bags[i]! }));
}

function batchingOf(bags: readonly number[], blend: MixParts, size: number): Batching | undefined {
  if (!(size > 0)) return undefined;
  const through = loads(bags, blend, size);
  return (
    through && {
      batches: through.batches,
      full: bagCounts(through.full, blend),
      last: bagCounts(through.last, blend),
      partBags: through.partBags,
      lastVolume: madeBy(through.last, blend),
    }
  );
}

function mixNotes(
  { waste, mix: { batchVolume } }: Practices,
  blend: MixParts,
  batching: Batching | undefined,
): readonly Note[] {
  const notes: Note[] = [
    tradeNote('mix', 'caution', 'cement-burns'),
    tradeNote('mix', 'caution', 'silica-dust'),
  ];
  const heaviest = blend.reduce((a, b) => (b.mix.weight > a.mix.weight ? b : a)).mix;
  if (heaviest.weight > ONE_PERSON_LIFT) {
    notes.push(
      tradeNote('mix', 'caution', 'heavy-bags', {
        facts: { weight: weight(heaviest.weight), limit: weight(ONE_PERSON_LIFT) },
      }),
    );
  }
  if (!batching || batching.partBags) {
    const code = batching ? 'batch-part-bags' : 'batch-too-small';
    notes.push(tradeNote('mix', 'caution', code, { facts: { size: bagYield(batchVolume) } }));
  }
  notes.push(
    tradeNote('mix', 'assumption', 'allowance-used', {
      facts: { share: share(waste.share), bags: count(waste.minimumBags, 'bag') },
    }),
    tradeNote('mix', 'assumption', 'yield-nominal'),
  );
  const [main, other] = blend;
  if (other) {
    notes.push(
      tradeNote('mix', 'assumption', 'blend-whole-bags', {
        facts: {
          mainParts: count(main.parts, 'part'),
          main: text(main.mix.name),
          otherParts: count(other.parts, 'part'),
          other: text(other.mix.name),
        },
      }),
    );
  }
  return notes;
}
