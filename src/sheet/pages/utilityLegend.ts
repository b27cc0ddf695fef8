import { UTILITY_STYLES, utilityLines } from '../../drawing/utilityLines.ts';
import type { Job } from '../../job/job.ts';
import { SERVICES } from '../../job/services.ts';
import { formatLength } from '../../units/length.ts';
import { filled, frame, line, text } from '../furniture.ts';
import type { PageWords } from '../sheetOptions.ts';
import { type LegendRow, rowsSaying } from './legendRow.ts';

const TEXT_MM = 2.5;
const SAMPLE_MM = 15;

/**
 * A row for each kind of buried line on the plan, and one for the ground on either side of it.
 * @param from From the left of a row to its words, mm.
 */
export function utilityRows(
  job: Job,
  { sheet: { layout }, drawing }: PageWords,
  from: number,
): readonly LegendRow[] {
  const drawn = new Set(utilityLines(job).map(({ service }) => service));
  if (drawn.size === 0) return [];
  const lines = SERVICES.filter((service) => drawn.has(service)).flatMap((service) => {
    const { carries, short } = drawing.services[service];
    return rowsSaying(`${short}: ${carries}`, from, (x, y) => [
      line(x, y - 1.1, x + SAMPLE_MM, y - 1.1, UTILITY_STYLES[service]),
    ]);
  });
  const { utilityTolerance } = job.practices;
  const within = layout.withinTolerance(formatLength(utilityTolerance, job.units));
  const band = rowsSaying(within, from, (x, y) => {
    const box = { x, y: y - 2.9, width: SAMPLE_MM, height: 3.5 };
    return [filled(box, 'tolerance'), frame(box)];
  });
  return [
    (x, y) => [text(layout.buried, x, y, { height: TEXT_MM, style: 'label' })],
    ...lines,
    ...(utilityTolerance > 0 ? band : []),
  ];
}
