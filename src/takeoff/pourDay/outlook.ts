import type { BagMix, Practices } from '../../job/job.ts';
import { pourDayOf } from '../../job/pourDay.ts';
import type { PourLog } from '../../job/pourLog.ts';
import type { MixResult, Takeoff } from '../result.ts';
import { chanceShort, type Forecast, forecast, type Mark } from './forecast.ts';
import { type Bed, bedOf, placedShare, shareError } from './front.ts';
import { frontsOf, type Progress, progressOf, volumeOf } from './progress.ts';
import { PATCH, SHORT_CHANCE, WATCH_CHANCE } from './rules.ts';

const MINUTE = 60_000;

/**
 * What to do about bags. All counts are bags of the blend, `send` rounded up so that the pour comes out in four cases of five
 * and more. enough: some will be left. watch: it may be short. short: somebody goes, at once or within so many minutes
 * (none known while two batches have not gone in); `late`: the bags run out so many minutes before anybody can be back.
 */
export type Advice =
  | { readonly is: 'enough'; readonly left: number }
  | { readonly is: 'watch'; readonly chance: number; readonly send: number }
  | {
      readonly is: 'short';
      readonly short: number;
      readonly send: number;
      readonly within?: number;
      readonly late?: number;
    };

/** The pour as it stands and as it will come out. Bags are those of the blend, fractions kept; volumes cubic grid units. */
export interface Outlook {
  readonly bed: Bed;
  readonly progress: Progress;
  /** Share placed at the last tap of the front; null before the first. */
  readonly placed: number | null;
  /** Batches that went in since then. */
  readonly since: number;
  readonly forecast: Forecast;
  /** Concrete that a bag makes, on the average of the blend. */
  readonly perBag: number;
  readonly plan: { readonly bags: number };
  readonly total: { readonly expected: number; readonly least: number; readonly most: number };
  readonly has: number;
  readonly used: number;
  readonly advice: Advice;
}

/** Nothing while the pour or its bags can't be figured. */
export function outlook(
  practices: Practices,
  { pour, volume, mix }: Takeoff,
  log: PourLog,
): Outlook | undefined {
  if (!pour || !volume || !mix || !(mix.net > 0)) return undefined;
  const { mixes } = practices.mix;
  const bed = bedOf(pour, volume);
  const settings = pourDayOf(practices);
  const progress = progressOf(log, mix, mixes);
  const fronts = frontsOf(log, mixes);
  const marks = fronts.map(
    ({ toward, along, used }): Mark => ({
      placed: placedShare(bed, toward, along),
      used: used / mix.net,
      error: shareError(bed, toward, along, settings.frontError),
    }),
  );
  const depth = volume.net / pour.area;
  const plan = {
    expected: (mix.net + lossOf(mix)) / mix.net,
    meanError: volume.spread / depth,
    // Patches of the ground are off by chance, so over the whole they even out by the root of how many there are.
    bumpError: (settings.patchDepth / depth) * Math.sqrt(Math.min(1, PATCH ** 2 / pour.area)),
  };
  const used = progress.used / mix.net;
  const whole = forecast(plan, marks, used);
  const perBag = perBagOf(mix, mixes);
  const bags = (share: number) => (share * mix.net) / perBag;
  const has = progress.has / perBag;
  return {
    bed,
    progress,
    placed: marks.at(-1)?.placed ?? null,
    since: batchesSince(log),
    forecast: whole,
    perBag,
    plan: { bags: bags(plan.expected) },
    total: {
      expected: bags(whole.expected),
      least: bags(whole.least),
      most: bags(whole.most),
    },
    has,
    used: progress.used / perBag,
    advice: advise(whole, mix, progress, perBag, settings),
  };
}

/** What is expected to go besides the net: a share, what is spilled, extras. Spread and whole bags are there to be safe. */
function lossOf({ allowanceParts }: MixResult): number {
  return allowanceParts.reduce(
    (sum, { part, volume }) => (part === 'spread' || part === 'floor' ? sum : sum + volume),
    0,
  );
}

function perBagOf({ bags }: MixResult, mixes: readonly BagMix[]): number {
  const parts = bags.map(({ mix, parts: bags }) => ({ mix, bags }));
  return volumeOf(parts, mixes) / parts.reduce((sum, part) => sum + part.bags, 0);
}

function batchesSince({ entries }: PourLog): number {
  const last = entries.findLastIndex(({ is }) => is === 'front');
  return entries.slice(last + 1).filter(({ is }) => is === 'batch').length;
}

function advise(
  whole: Forecast,
  { net }: MixResult,
  progress: Progress,
  perBag: number,
  { tripMinutes, marginMinutes }: { readonly tripMinutes: number; readonly marginMinutes: number },
): Advice {
  const has = progress.has / net;
  const chance = chanceShort(whole, has);
  const bags = (share: number) => (share * net) / perBag;
  const send = Math.max(1, Math.ceil(bags(whole.most - has) - 1e-9));
  if (chance < WATCH_CHANCE) {
    return { is: 'enough', left: Math.max(0, bags(has - whole.expected)) };
  }
  if (chance < SHORT_CHANCE) return { is: 'watch', chance, send };
  const short = Math.max(0, bags(whole.expected - has));
  if (progress.pace === null) return { is: 'short', short, send };
  // What is left at the pad lasts so long at the pace of the last batches.
  const lasts = Math.max(0, progress.has - progress.used) / progress.pace / MINUTE;
  const within = Math.max(0, lasts - tripMinutes - marginMinutes);
  return {
    is: 'short',
    short,
    send,
    within,
    ...(lasts < tripMinutes ? { late: tripMinutes - lasts } : {}),
  };
}
