import type { Point } from '../../geometry/point.ts';
import type { Command } from '../../job/commands.ts';
import type { Attachment, Corner, Feature, FeatureKind, Job, Outline } from '../../job/job.ts';

/** A corner as it was drawn: it gets its id when the outline is added. */
export interface DraftCorner extends Point {
  readonly on?: Attachment;
}

/** A new feature: the command that adds it, and the id it will have. */
export interface NewFeature {
  readonly command: Command;
  readonly id: string;
}

/** Steps are drawn with this many treads until told otherwise. It changes no figure. */
const TREADS = 2;

export function newOutline(
  { nextId }: Job,
  kind: FeatureKind,
  places: readonly DraftCorner[],
  closed: boolean,
): NewFeature {
  const corners = places.map(
    ({ x, y, on }, index): Corner => ({
      id: `c${nextId + 1 + index}`,
      x,
      y,
      rise: 0,
      ...(on ? { on } : {}),
    }),
  );
  return adding(outlineFeature(`f${nextId}`, kind, { form: 'outline', closed, corners }));
}

export function newRound(
  { nextId }: Job,
  center: Point,
  diameter: number,
  kind: 'block-out' | 'no-stake-zone' = 'block-out',
): NewFeature {
  return adding({ id: `f${nextId}`, name: '', kind, shape: { form: 'round', center, diameter } });
}

/** An upright rectangle, counter-clockwise from its lower left corner. */
export function rectangle(a: Point, b: Point): readonly Point[] {
  const [left, right] = a.x < b.x ? [a.x, b.x] : [b.x, a.x];
  const [low, high] = a.y < b.y ? [a.y, b.y] : [b.y, a.y];
  return [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ];
}

function outlineFeature(id: string, kind: FeatureKind, shape: Outline): Feature {
  const base = { id, name: '', shape };
  switch (kind) {
    case 'building-line':
      // Most walls stand on a foundation; the bar under the sketch asks at once, since the feature is selected.
      return { ...base, kind, pourAgainst: true };
    case 'steps':
      return { ...base, kind, treads: TREADS };
    case 'utility-line':
      // Nobody guesses what a line carries: electric is the one to be most careful with, until it is said.
      return { ...base, kind, service: 'electric' };
    case 'joint':
      return { ...base, kind, joint: 'control' };
    case 'pad':
    case 'existing-slab':
    case 'block-out':
    case 'patch':
    case 'no-stake-zone':
      return { ...base, kind };
  }
}

function adding(feature: Feature): NewFeature {
  return { command: { do: 'add-feature', feature }, id: feature.id };
}
