/** A ring as the clipping libraries take it: pairs about a local origin, not always whole numbers on the way out. */
export type LooseRing = [number, number][];

/** An outer ring; further rings are holes in it, whichever way they run and even where they reach outside it. */
export type LooseShape = LooseRing[];

export type EngineName = 'polygon-clipping' | 'clipper2';

/** All inside any subject and inside no clip. */
export type Engine = (
  subjects: readonly LooseShape[],
  clips: readonly LooseShape[],
) => readonly LooseShape[];
