import { type Grid, INCH } from '../../units/grid.ts';

/**
 * A mean difference in the ground's height that nobody sees: what it costs is told with the volume, since the ground is
 * taken as flat. Common practice, no source.
 */
export const UNSEEN_DEPTH: Grid = INCH / 4;

/** Curved edges as chords this near to them, when the strip along them is figured: 1/20 mm, which no tape shows. */
export const ARC_CHORDS: Grid = 16;

/**
 * What a published code for houses asks of a slab on ground at least. Said as a caution alone: local code decides.
 * @source irc-slab-thickness
 */
export const LEAST_PUBLISHED: Grid = 3.5 * INCH;

/** With fewer taped depths than this nothing is said of their spread; and from so many on, a small slab is well known. Common practice. */
export const LEAST_READINGS = 3;
export const GOOD_READINGS = 5;

/** No taped depth is nearer than this: earth is loose, and a string sags. Common practice, no source. */
export const TAPED_WITHIN: Grid = INCH / 8;

/** A mean depth that is off the thickness by more than this is said: an eighth of an inch, as a tape is read. */
export const DEPTH_DIFFERS: Grid = INCH / 8;
