import { FOOT } from '../../units/grid.ts';

/** Patches that the ground is probed by, a side: a tape reading every 2 ft. Common practice, no source. */
export const PATCH = 2 * FOOT;

/** Bands are told so wide that four pours in five come out inside: 1.2816 standard deviations of a normal either way. */
export const BAND_DEVIATIONS = 1.2815515655446004;

/** From this chance of being short on, somebody is told to go; from the lesser one on, to keep an eye on it. Our own. */
export const SHORT_CHANCE = 0.5;
export const WATCH_CHANCE = 0.2;

/** The pace is that of the last so many batches. Our own. */
export const PACE_BATCHES = 6;

/** Joints nearer than this to square with the way the front goes are checkpoints, degrees. Our own. */
export const CHECKPOINT_SKEW = 30;

/**
 * What is believed of a crew's mean ratio of used to net before any job is closed: the default allowance, give or take
 * 5 % (published allowances run from 3 to 20 %, which as an even spread is a standard deviation of 5 %), as a standard
 * deviation of its logarithm.
 */
export const PRIOR_MEAN_DEVIATION = 0.05;

/**
 * How far one job is from the crew's mean before any is closed: 7 %, which is a quarter of an inch of mean depth on 3 1/2 in;
 * and how many jobs' word that has against the jobs' own spread. Our own.
 */
export const PRIOR_JOB_DEVIATION = 0.07;
export const PRIOR_JOB_WEIGHT = 4;

/** A ratio outside of these was counted or drawn wrong: it is told, and left out. Our own. */
export const RATIO_LEAST = 0.5;
export const RATIO_MOST = 2;
