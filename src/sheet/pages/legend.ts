import type { Mark, Material } from '../../drawing/marks.ts';
import { EDGE_STYLES } from '../../drawing/pour.ts';
import type { Feature, Job } from '../../job/job.ts';
import { EDGE_KINDS } from '../../takeoff/outline/pour.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { filled, frame, line, symbol, text } from '../furniture.ts';
import type { Rect } from '../page.ts';
import type { PageWords } from '../sheetOptions.ts';
import type { LayoutWords } from '../words/layout.ts';
import { jointRows } from './jointLegend.ts';
import { keptWithNext, type LegendRow, rowsSaying } from './legendRow.ts';
import { utilityRows } from './utilityLegend.ts';

export const TEXT_MM = 2.5;
export const SAMPLE_MM = 15;
/** From the left of a row to its words. */
const WORDS_MM = SAMPLE_MM + 9;

type Ground = keyof LayoutWords['materials'];
const GROUND: readonly (readonly [Ground & Material, readonly Feature['kind'][]])[] = [
  ['fresh-concrete', ['pad']],
  ['old-concrete', ['existing-slab']],
  ['steps', ['steps']],
  ['building', ['building-line']],
  ['patch', ['patch']],
  ['no-stake', ['no-stake-zone']],
];

/** A row for each kind of edge and ground that is on the plan. */
export function legendRows(
  job: Job,
  takeoff: Takeoff,
  { sheet, drawing }: PageWords,
): readonly LegendRow[] {
  const { pour, joints } = takeoff;
  const { layout } = sheet;
  const kinds = EDGE_KINDS.filter((kind) => pour && pour.lengthByKind[kind] > 0);
  const edges = kinds.flatMap((kind) =>
    rowsSaying(layout.edgeKinds[kind], WORDS_MM, (x, y) => [
      line(x, y - 1.1, x + SAMPLE_MM, y - 1.1, EDGE_STYLES[kind]),
      text(drawing.letters[kind], x + SAMPLE_MM + 2, y, { height: TEXT_MM, style: 'label' }),
    ]),
  );
  const strip: readonly LegendRow[] =
    joints && joints.isolation.length > 0
      ? rowsSaying(layout.strip, WORDS_MM, (x, y) => [
          line(x, y - 1.1, x + SAMPLE_MM, y - 1.1, 'strip'),
        ])
      : [];
  const jointed = jointRows(job, takeoff, { drawing }, SAMPLE_MM + 2);
  return [
    ...(edges.length > 0 ? [heading(layout.edges), ...edges, ...strip, ...jointed] : []),
    ...groundRows(job, layout, WORDS_MM),
    // Their words begin where the letters of the edges stand.
    ...utilityRows(job, { sheet, drawing }, SAMPLE_MM + 2),
  ];
}

export function heading(words: string): LegendRow {
  return keptWithNext((x, y) => [text(words, x, y, { height: TEXT_MM, style: 'label' })]);
}

/**
 * A row for each kind of ground that is on the plan.
 * @param words From the left of a row to its words, mm.
 */
export function groundRows(job: Job, layout: LayoutWords, words: number): readonly LegendRow[] {
  const drawn = new Set(job.features.map(({ kind }) => kind));
  const grounds = GROUND.filter(([, of]) => of.some((kind) => drawn.has(kind))).flatMap(
    ([material]) =>
      rowsSaying(layout.materials[material], words, (x, y) => {
        const box: Rect = { x, y: y - 2.9, width: SAMPLE_MM, height: 3.5 };
        return [filled(box, material), frame(box)];
      }),
  );
  return grounds.length > 0 ? [heading(layout.ground), ...grounds] : [];
}

/**
 * Rows that show a sign and say what it is.
 * @param words From the left of a row to its words, mm.
 */
export function signRow(
  words: number,
): (sample: (x: number, y: number) => readonly Mark[], what: string) => readonly LegendRow[] {
  return (sample, what) => rowsSaying(what, words, (x, y) => sample(x, y - 1.1));
}

/** Distances from a ring along a line, each at a tick. */
export function runningSample(x: number, y: number): readonly Mark[] {
  return [
    line(x + 2, y, x + SAMPLE_MM - 2, y, 'dimension'),
    symbol('origin', x + 2, y, 1.8, 0),
    symbol('tick', x + SAMPLE_MM / 2, y, 2.2, 0),
    symbol('tick', x + SAMPLE_MM - 2, y, 2.2, 0),
  ];
}
