import type { Mark, Material } from '../../drawing/marks.ts';
import { EDGE_STYLES } from '../../drawing/pour.ts';
import type { Feature, Job } from '../../job/job.ts';
import { EDGE_KINDS } from '../../takeoff/outline/pour.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { filled, frame, line, symbol, text } from '../furniture.ts';
import { shortened } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { PageWords } from '../sheetOptions.ts';
import type { LayoutWords } from '../words/layout.ts';
import { utilityRows } from './utilityLegend.ts';

export const ROW_MM = 4.7;
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

export type LegendRow = (x: number, y: number, width: number) => readonly Mark[];

/** A row for each kind of edge and ground that is on the plan. */
export function legendRows(
  job: Job,
  { pour, joints }: Takeoff,
  { sheet, drawing }: PageWords,
): readonly LegendRow[] {
  const { layout } = sheet;
  const kinds = EDGE_KINDS.filter((kind) => pour && pour.lengthByKind[kind] > 0);
  const edges = kinds.map(
    (kind): LegendRow =>
      (x, y, width) => [
        line(x, y - 1.1, x + SAMPLE_MM, y - 1.1, EDGE_STYLES[kind]),
        text(drawing.letters[kind], x + SAMPLE_MM + 2, y, { height: TEXT_MM, style: 'label' }),
        said(layout.edgeKinds[kind], x + WORDS_MM, y, width - WORDS_MM),
      ],
  );
  const strip: readonly LegendRow[] =
    joints && joints.isolation.length > 0
      ? [
          (x, y, width) => [
            line(x, y - 1.1, x + SAMPLE_MM, y - 1.1, 'strip'),
            said(layout.strip, x + WORDS_MM, y, width - WORDS_MM),
          ],
        ]
      : [];
  return [
    ...(edges.length > 0 ? [heading(layout.edges), ...edges, ...strip] : []),
    ...groundRows(job, layout, WORDS_MM),
    // Their words begin where the letters of the edges stand.
    ...utilityRows(job, { sheet, drawing }, SAMPLE_MM + 2),
  ];
}

export function said(words: string, x: number, y: number, width: number): Mark {
  return text(shortened(words, TEXT_MM, width), x, y, { height: TEXT_MM });
}

export function heading(words: string): LegendRow {
  return (x, y) => [text(words, x, y, { height: TEXT_MM, style: 'label' })];
}

/**
 * A row for each kind of ground that is on the plan.
 * @param words From the left of a row to its words, mm.
 */
export function groundRows(job: Job, layout: LayoutWords, words: number): readonly LegendRow[] {
  const drawn = new Set(job.features.map(({ kind }) => kind));
  const grounds = GROUND.filter(([, of]) => of.some((kind) => drawn.has(kind))).map(
    ([material]): LegendRow =>
      (x, y, width) => {
        const box: Rect = { x, y: y - 2.9, width: SAMPLE_MM, height: 3.5 };
        return [
          filled(box, material),
          frame(box),
          said(layout.materials[material], x + words, y, width - words),
        ];
      },
  );
  return grounds.length > 0 ? [heading(layout.ground), ...grounds] : [];
}

/**
 * Rows that show a sign and say what it is.
 * @param words From the left of a row to its words, mm.
 */
export function signRow(
  words: number,
): (sample: (x: number, y: number) => readonly Mark[], what: string) => LegendRow {
  return (sample, what) => (x, y, width) => [
    ...sample(x, y - 1.1),
    said(what, x + words, y, width - words),
  ];
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
