import type { BagMix } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { JointLine } from '../joints/layout.ts';
import { bulkheads } from './bulkheads.ts';
import { type Given, isInTrouble, type Plan, planPour } from './plan.ts';

/** Something that helps, worked through as the pour itself is. */
export type Offer = OfferBy & {
  /** The last concrete of the pour, or of its hardest section, lies; minutes. */
  readonly placed: number;
  readonly oldest: number;
  readonly works: boolean;
};

type OfferBy =
  | { readonly by: 'hands'; readonly hands: number }
  | { readonly by: 'mixer'; readonly mixers: number; readonly hands: number }
  | { readonly by: 'narrow'; readonly width: Grid }
  | { readonly by: 'mix'; readonly name: string }
  /** °C of the water. */
  | { readonly by: 'water'; readonly celsius: number }
  /** Joints by their number, square grid units of each section. */
  | {
      readonly by: 'bulkhead';
      readonly joints: readonly number[];
      readonly areas: readonly number[];
    }
  | { readonly by: 'truck' };

/** What else could be had. */
export interface Means {
  /** Slower mixes, each with its batches if it alone were poured. */
  readonly slower: readonly { readonly mix: BagMix; readonly batches: readonly number[] }[];
  /** What cool water would make of the set factor; absent when it wouldn't cool anything. */
  readonly cooled?: { readonly celsius: number; readonly setFactor: number };
  readonly joints: readonly JointLine[];
}

/** More hands than this aren't asked for. Our own. */
const MORE_HANDS = 4;

/** What works, and what helps without being enough, each figured anew. What doesn't help isn't offered. */
export function offersFor(given: Given, plan: Plan, means: Means): readonly Offer[] {
  const { rules } = given;
  const offers: Offer[] = [];
  const add = (by: OfferBy, one: Plan | undefined) => {
    if (!one) return;
    const works = !isInTrouble(one);
    if (!works && !isBetter(one, plan)) return;
    offers.push({ ...by, placed: one.timeline.placed, oldest: one.oldest.age, works });
  };
  const withRules = (change: Partial<Given['rules']>) =>
    planPour({ ...given, rules: { ...rules, ...change } });
  const crews = Array.from({ length: MORE_HANDS }, (_, i) => rules.crew + 1 + i);
  const enough = crews.find((crew) => works(withRules({ crew })));
  const crew = enough ?? crews.at(-1)!;
  add({ by: 'hands', hands: crew - rules.crew }, withRules({ crew }));
  const mixers = rules.mixers + 1;
  const atMixers =
    crews.find((hands) => works(withRules({ mixers, crew: hands }))) ?? crews.at(-1)!;
  add(
    { by: 'mixer', mixers: 1, hands: atMixers - rules.crew },
    withRules({ mixers, crew: atMixers }),
  );
  const widest = Math.max(...plan.strips.map(({ width }) => width));
  const width = Math.round(widest / 2);
  add({ by: 'narrow', width }, planPour({ ...given, span: width }));
  for (const { mix, batches } of means.slower) {
    add({ by: 'mix', name: mix.name }, planPour({ ...given, set: mix.set, batches }));
  }
  if (means.cooled) {
    const { celsius, setFactor } = means.cooled;
    add({ by: 'water', celsius }, planPour({ ...given, setFactor }));
  }
  const sections = bulkheads(given, means.joints);
  if (sections) {
    const { joints, areas, worst } = sections;
    add({ by: 'bulkhead', joints, areas }, worst);
  }
  add({ by: 'truck' }, withRules({ cycle: 0 }));
  return offers;
}

function works(plan: Plan | undefined): boolean {
  return plan !== undefined && !isInTrouble(plan);
}

/** Less goes wrong, or what does goes less wrong: against its own limits, which cool water and another mix move. */
function isBetter(one: Plan, other: Plan): boolean {
  const strain = ({ oldest, window, timeline, clock }: Plan) =>
    Math.max(oldest.age / window, timeline.placed / clock.initial);
  return strain(one) < strain(other) * 0.95;
}
