import type { Practices } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import {
  halfBags as bagsOf,
  bagVolume,
  bagYield,
  count,
  number,
  share,
  text,
  waterVolume,
  weight,
} from '../quantity.ts';
import type { MixResult } from '../result.ts';
import { setOf } from './batches.ts';
import { MOST_LISTED } from './batchList.ts';
import { madeBy, type Step } from './blend.ts';
import type { MixParts } from './parts.ts';
import { ONE_PERSON_LIFT } from './rules.ts';

/** What must be said of the bags, the mixer and the allowance. */
export function mixNotes(practices: Practices, blend: MixParts, mix: MixResult): readonly Note[] {
  return [
    ...(mix.batching ? [] : [tooSmall(practices, blend)]),
    tradeNote('mix', 'caution', 'cement-burns'),
    tradeNote('mix', 'caution', 'silica-dust'),
    ...heavyNotes(blend),
    waterNote(mix),
    allowanceNote(practices, mix),
    tradeNote('mix', 'assumption', 'yield-nominal'),
    ...blendNotes(practices, blend),
    ...(mix.batchRounding > 0
      ? [
          tradeNote('mix', 'assumption', 'last-batch-filled', {
            facts: { more: bagVolume(mix.batchRounding) },
          }),
        ]
      : []),
    ...openNotes(blend, mix),
    ...(mix.batching && mix.batching.batches > MOST_LISTED
      ? [
          tradeNote('mix', 'caution', 'batches-not-listed', {
            facts: { most: count(MOST_LISTED, 'batch') },
          }),
        ]
      : []),
  ];
}

/** Why no batches are counted, and what would mend it. */
function tooSmall({ mix: { batchVolume, halfBags } }: Practices, blend: MixParts): Note {
  const step: Step = halfBags ? 0.5 : 1;
  const set = setOf(blend, step);
  const size = bagYield(batchVolume);
  const makes = bagYield(madeBy(set, blend));
  const [main, other] = blend;
  if (other) {
    return tradeNote('mix', 'stop', halfBags ? 'batch-below-half-set' : 'batch-below-set', {
      facts: {
        size,
        makes,
        mainBags: bagsOf(set[0]!),
        main: text(main.mix.name),
        otherBags: bagsOf(set[1]!),
        other: text(other.mix.name),
      },
    });
  }
  return tradeNote('mix', 'stop', halfBags ? 'batch-below-half-bag' : 'batch-too-small', {
    facts: { size, makes },
  });
}

function heavyNotes(blend: MixParts): readonly Note[] {
  const heaviest = blend.reduce((a, b) => (b.mix.weight > a.mix.weight ? b : a)).mix;
  if (heaviest.weight <= ONE_PERSON_LIFT) return [];
  const facts = { weight: weight(heaviest.weight), limit: weight(ONE_PERSON_LIFT) };
  return [tradeNote('mix', 'caution', 'heavy-bags', { facts })];
}

function waterNote({ water }: MixResult): Note {
  const facts = { least: waterVolume(water.least), most: waterVolume(water.most) };
  return water.from === 'bag'
    ? tradeNote('mix', 'assumption', 'water-by-bag', { facts })
    : tradeNote('mix', 'caution', 'water-unknown', { facts });
}

function allowanceNote({ waste }: Practices, mix: MixResult): Note {
  const bags = count(waste.minimumBags, 'bag');
  if (waste.by === 'share') {
    const facts = { share: share(waste.share), bags };
    return tradeNote('mix', 'assumption', 'allowance-used', { facts });
  }
  const spread = mix.allowanceParts.find(({ part }) => part === 'spread')!;
  return tradeNote('mix', 'assumption', 'allowance-by-parts', {
    facts: {
      times: number(waste.spreadTimes),
      spread: bagVolume(spread.volume),
      spillage: share(waste.spillage),
      bags,
    },
  });
}

function blendNotes({ mix: { halfBags } }: Practices, blend: MixParts): readonly Note[] {
  const [main, other] = blend;
  if (!other) return [];
  return [
    tradeNote('mix', 'assumption', halfBags ? 'blend-half-bags' : 'blend-whole-bags', {
      facts: {
        mainParts: count(main.parts, 'part'),
        main: text(main.mix.name),
        otherParts: count(other.parts, 'part'),
        other: text(other.mix.name),
      },
    }),
  ];
}

/** A bag that is opened and not used up. */
function openNotes(blend: MixParts, { bags, mixed }: MixResult): readonly Note[] {
  return blend.flatMap((part, i) =>
    bags[i]!.bags === mixed[i]!.bags
      ? []
      : [
          tradeNote('mix', 'assumption', 'half-bag-left', {
            facts: { mix: text(part.mix.name) },
          }),
        ],
  );
}
