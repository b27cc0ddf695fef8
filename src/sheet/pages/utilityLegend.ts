import type { Mark } from '../../drawing/marks.ts';
import { UTILITY_STYLES, utilityLines } from '../../drawing/utilityLines.ts';
import type { Job } from '../../job/job.ts';
import { SERVICES } from '../../job/services.ts';
import { formatLength } from '../../units/length.ts';
import { filled, frame, line, text } from '../furniture.ts';
import { shortened } from '../lettering.ts';
import type { PageWords } from '../sheetOptions.ts';

const TEXT_MM = 2.5;
const SAMPLE_MM = 15;
type Row = (x: number, y: number, width: number) => readonly Mark[];

/**
 * A row for each kind of buried line on the plan, and one for the ground on either side of it.
 * @param from From the left of a row to its words, mm.
 */
export function utilityRows(
  job: Job,
  { sheet: { layout }, drawing }: PageWords,
  from: number,
): readonly Row[] {
  const drawn = new Set(utilityLines(job).map(({ service }) => service));
  if (drawn.size === 0) return [];
  const said = (words: string, x: number, y: number, width: number) =>
    text(shortened(words, TEXT_MM, width - from), x + from, y, { height: TEXT_MM });
  const lines = SERVICES.filter((service) => drawn.has(service)).map((service): Row => {
    const { carries, short } = drawing.services[service];
    return (x, y, width) => [
      line(x, y - 1.1, x + SAMPLE_MM, y - 1.1, UTILITY_STYLES[service]),
      said(`${short}: ${carries}`, x, y, width),
    ];
  });
  const { utilityTolerance } = job.practices;
  const band: Row = (x, y, width) => {
    const box = { x, y: y - 2.9, width: SAMPLE_MM, height: 3.5 };
    const within = layout.withinTolerance(formatLength(utilityTolerance, job.units));
    return [filled(box, 'tolerance'), frame(box), said(within, x, y, width)];
  };
  return [
    (x, y) => [text(layout.buried, x, y, { height: TEXT_MM, style: 'label' })],
    ...lines,
    ...(utilityTolerance > 0 ? [band] : []),
  ];
}
