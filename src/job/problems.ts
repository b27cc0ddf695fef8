/**
 * Codes of what can be wrong with a command, a job or a job file. The language files (`sheet/words`) have one sentence
 * for each. `where` is a feature's id for a refusal, the place in the file (`job.features[2].shape`) for a file.
 */
export const JOB_PROBLEMS = [
  // Commands.
  /** The feature is no longer in the job. */
  'no-such-feature',
  /** The corner is no longer in the feature. */
  'no-such-corner',
  /** The stake is no longer among those set by hand. */
  'no-such-stake',
  /** A stake was set by hand at this very place already. */
  'stake-there-already',
  /** More stakes set by hand than a job may have. facts: `most`. */
  'too-many-hand-stakes',
  /** An edge was meant, but an open line has none after its last corner. */
  'no-such-edge',
  /** The feature's id, or one of its corners', is used already. */
  'id-taken',
  /** It has no corners: it is round. */
  'not-an-outline',
  'not-round',
  /** The setting doesn't belong to this kind of feature. facts: `setting`, `kind`. */
  'not-for-this-kind',
  /** Fewer than three corners (two where an edge is an arc; two on an open line). facts: `least`. */
  'too-few-corners',
  /** A size that must be more than nothing isn't. facts: `seen` (grid units). */
  'size-not-positive',
  /** The new length would make a neighbouring edge vanish or run backwards. */
  'edge-turns-over',
  /** A corner can't stay on an edge of its own feature. */
  'attached-to-itself',
  /** The edge that a corner should stay on isn't there. facts: `feature`, `corner`. */
  'attachment-lost',
  /** Corners that hold on to each other in a circle: none of them has a place. */
  'attachment-circle',
  /** Two corners in a row on one place: an edge without length. */
  'corners-coincide',
  /** A joint has an arc in it. */
  'joint-not-straight',
  /** The job would be more than 200 m across. */
  'too-large',
  /** A place more than 2 km from the origin. */
  'too-far',
  /** Not a finite number, or not a whole number of grid units. */
  'not-on-grid',

  // Boards of truck and yard. `where` is the field of a row: `truck[0].length`. facts: `seen`, and `least` or `most`.
  /** Under a foot: no form board. */
  'board-too-short',
  /** Longer than any truck carries. */
  'board-too-long',
  /** None, or more than anybody carries. */
  'board-count',
  /** Less than nothing, or more than any board costs. */
  'board-price',

  // Starting a job from typed sizes. `where` is the size: `length`, `width`, `notchLength`, `notchWidth`.
  /** The notch of the L is as long or as wide as the whole. */
  'notch-too-large',

  // Files.
  'file-empty',
  /** Not JSON. facts: `says` (the reader's own words). */
  'file-not-json',
  /** JSON, but not a job file of ours. */
  'file-not-ours',
  /** Written by a newer program. facts: `version`, `known`. */
  'file-newer',
  /** The version is no version. facts: `seen`. */
  'file-version',
  /** More characters than any job takes. facts: `most`. */
  'file-too-big',
  /** Something is missing. */
  'field-missing',
  /** Something that a job file doesn't have. */
  'field-unknown',
  /** Of the wrong kind. facts: `seen`, `expected` (`text`, `number`, `whole-number`, `list`, `object`, `true-false`). */
  'field-type',
  /** Not one of the choices. facts: `seen`, `choices`. */
  'field-choice',
  /** Out of bounds. facts: `seen`, and `least` or `most`. */
  'field-range',
  /** What should be the least or the first is more than what should be the most or the last. */
  'field-order',
  /** Text, or a list, longer than it may be. facts: `most`. */
  'field-long',
  /** A list that may not be empty is. */
  'field-none',
  /** An id of other than letters, digits, - and _. facts: `seen`. */
  'field-id',
  /** An id that is used twice. facts: `id`. */
  'field-id-twice',
  /** `nextId` must be beyond every number in use. facts: `seen`, `least`. */
  'field-next-id',
  /** Only a building line or a utility line may be open. */
  'field-not-closed',
  /** A utility line has no inside. */
  'field-not-open',
  /** The blend names a mix that isn't in the list. facts: `mix`. */
  'field-no-such-mix',
  /** More is wrong than is listed. facts: `count` of those left out. */
  'file-more-problems',
] as const;

export type JobProblemCode = (typeof JOB_PROBLEMS)[number];
