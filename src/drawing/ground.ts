import { locate } from '../geometry/locate.ts';
import type { Point } from '../geometry/point.ts';
import type { BuildingLine, Feature, Job } from '../job/job.ts';
import type { LineStyle, Mark, Material } from './marks.ts';
import { bandPath, pathPoints, type Side, shapePath, sidesOf } from './paths.ts';
import { UTILITY_STYLES } from './utilityLines.ts';

const MATERIALS: Readonly<
  Record<Exclude<Feature['kind'], 'pad' | 'utility-line' | 'joint'>, Material>
> = {
  'existing-slab': 'old-concrete',
  'building-line': 'building',
  steps: 'steps',
  'block-out': 'block-out',
  patch: 'patch',
  'no-stake-zone': 'no-stake',
};

const STYLES: Readonly<Record<Exclude<Feature['kind'], 'utility-line' | 'joint'>, LineStyle>> = {
  pad: 'outline',
  'existing-slab': 'outline-existing',
  'building-line': 'outline-wall',
  steps: 'outline-steps',
  'block-out': 'outline-block-out',
  patch: 'outline-patch',
  'no-stake-zone': 'hidden',
};

/** What a feature is made of, as far as its outline encloses something. */
export function featureArea(feature: Feature): readonly Mark[] {
  // Lines have no inside.
  if (feature.kind === 'pad' || feature.kind === 'utility-line' || feature.kind === 'joint') {
    return [];
  }
  const path = shapePath(feature.shape);
  if (!path?.closed || path.segments.length < 2) return [];
  const layer = feature.kind === 'no-stake-zone' ? 'ground' : 'existing';
  const material = MATERIALS[feature.kind];
  return [{ kind: 'area', layer, material, paths: [path], feature: feature.id }];
}

/** A feature's outline as it was drawn. */
export function featureOutline(feature: Feature): readonly Mark[] {
  const path = shapePath(feature.shape);
  if (!path || path.segments.length === 0) return [];
  return [{ kind: 'line', layer: 'edges', style: styleOf(feature), path, feature: feature.id }];
}

function styleOf(feature: Feature): LineStyle {
  if (feature.kind === 'utility-line') return UTILITY_STYLES[feature.service];
  if (feature.kind === 'joint') return `joint-${feature.joint}`;
  const formed = feature.kind === 'building-line' && !feature.pourAgainst;
  return formed ? 'outline-wall-formed' : STYLES[feature.kind];
}

/** Depth of the band that stands for what is behind a wall's line, mm of output. */
export const BAND_MM = 3.5;

/** The side of a wall's line on which the building stands: away from the pads. */
export function wallBand(wall: BuildingLine, job: Job, gridPerMm: number): readonly Mark[] {
  if (wall.shape.closed || !shapePath(wall.shape)) return [];
  const sides = sidesOf(wall.shape);
  const paths = sides.map((side) => bandPath(side, sideAway(side, job) * BAND_MM * gridPerMm));
  return paths.map((path) => ({
    kind: 'area',
    layer: 'existing',
    material: 'building',
    paths: [path],
    feature: wall.id,
  }));
}

/** 1 when the building is to the right of a wall's edge, -1 when to its left. */
function sideAway({ from, to }: Side, { features }: Job): 1 | -1 {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  // A hand's breadth off the wall, to its left.
  const step = 32_000 / length;
  const left = { x: middle.x - (to.y - from.y) * step, y: middle.y + (to.x - from.x) * step };
  const right = { x: 2 * middle.x - left.x, y: 2 * middle.y - left.y };
  const rings = features.flatMap(({ kind, shape }) => {
    const path = kind === 'pad' ? shapePath(shape) : undefined;
    return path?.closed ? [pathPoints(path)] : [];
  });
  const poured = (at: Point) => rings.some((ring) => locate(at, ring) !== 'outside');
  if (poured(left) !== poured(right)) return poured(left) ? 1 : -1;
  // Away from it all: by which side most corners lie on.
  const lean = rings
    .flat()
    .reduce(
      (sum, at) =>
        sum + Math.sign((to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x)),
      0,
    );
  return lean >= 0 ? 1 : -1;
}
