/** Codes of what can go wrong with keeping jobs on the device and with links that carry one. The language files have one sentence for each. */
export const STORAGE_PROBLEMS = [
  /** No job of that id is kept here. */
  'no-such-job',
  /** The device has no room left for it. */
  'storage-full',
  /** Another tab holds an older store open; it must be closed or reloaded first. */
  'storage-blocked',
  /** The store can't be opened or written here (a private window, or storage is switched off). facts: `says`. */
  'storage-unavailable',
  /** What reads links could not be loaded. facts: `says`. */
  'link-not-read',
  /** The end of a link is missing. */
  'link-cut-short',
  /** A link isn't as it was made. */
  'link-broken',
  /** facts: `packing`, `known`. */
  'link-newer',
  /** facts: `length`, `most`, in characters. */
  'link-too-long',
] as const;

export type StorageProblemCode = (typeof STORAGE_PROBLEMS)[number];
