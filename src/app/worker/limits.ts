/** Half of one frame at 60 Hz: the other half is for drawing. */
export const SLOW_AFTER_MS = 8;

/** Corners up to which a job is tried on the page's own thread. */
export const MANY_CORNERS = 400;

/** A takeoff that isn't done after this will hardly be worth the wait. */
export const WORKER_PATIENCE_MS = 15_000;

/** How long what is drawn must rest before it is searched. */
export const SEARCH_PAUSE_MS = 400;

/** How long a search may take, seconds. */
export const SEARCH_SECONDS = 20;

/** What its worker has besides, to come down on a slow line and to answer. */
export const SEARCH_GRACE_MS = 15_000;
