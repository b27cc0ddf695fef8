import type { Mark } from '../drawing/marks.ts';
import type { Point } from '../geometry/point.ts';
import type { Job } from '../job/job.ts';
import type { DimensionText } from './hit.ts';
import { fontPx } from './paint/fontSize.ts';
import { edgesOf, type SiteEdge } from './site.ts';

/** A letter's width against its height, on average. */
const LETTER = 0.6;
/** A dimension stands along its edge, within this turn (sine of about 3°). */
const ALONG = 0.05;

/** The dimension texts of a drawing with the edge that each measures; a text that measures no single edge is left out. */
export function dimensionTexts(
  marks: readonly Mark[],
  job: Job,
  gridPerPx: number,
): readonly DimensionText[] {
  const edges = new Map(job.features.map((feature) => [feature.id, edgesOf(feature)]));
  return marks.flatMap((mark): readonly DimensionText[] => {
    if (mark.kind !== 'text' || mark.style !== 'dimension' || !mark.feature) return [];
    const edge = measured(mark.at, mark.angle, edges.get(mark.feature) ?? []);
    if (!edge) return [];
    const height = fontPx(mark.height) * gridPerPx;
    const length = mark.text.length * LETTER * height;
    const shift = mark.anchor === 'middle' ? 0 : mark.anchor === 'start' ? length / 2 : -length / 2;
    const { angle, at, feature } = mark;
    return [
      {
        feature,
        corner: edge.from.id,
        middle: { x: at.x + shift * Math.cos(angle), y: at.y + shift * Math.sin(angle) },
        halfLength: length / 2,
        halfHeight: height / 2,
        angle,
      },
    ];
  });
}

/** The nearest edge along the text that the text stands beside. */
function measured(at: Point, angle: number, edges: readonly SiteEdge[]): SiteEdge | null {
  let found: SiteEdge | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const edge of edges) {
    const dx = edge.to.x - edge.from.x;
    const dy = edge.to.y - edge.from.y;
    const length = Math.hypot(dx, dy);
    const across = Math.abs(dx * Math.sin(angle) - dy * Math.cos(angle)) / length;
    const along = ((at.x - edge.from.x) * dx + (at.y - edge.from.y) * dy) / (length * length);
    if (across > ALONG || along < 0 || along > 1) continue;
    const away = Math.abs((at.x - edge.from.x) * dy - (at.y - edge.from.y) * dx) / length;
    if (away >= least) continue;
    found = edge;
    least = away;
  }
  return found;
}
