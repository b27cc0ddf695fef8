import type { Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import { frame, line, text } from '../furniture.ts';
import { printable, shortened, wrapped } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';

export const TITLE_HEIGHT = 22;

const NAME_MM = 4.2;
const SMALL_MM = 2.5;

export interface TitleFacts {
  readonly sheet: string;
  /** The plan's scale as it is printed; absent on lists. */
  readonly scale?: string;
  readonly page: number;
  readonly pages: number;
}

/** Job and site · scale, units and the rule that figures rule · page, revision, date. */
export function titleBlock(
  job: Job,
  box: Rect,
  facts: TitleFacts,
  options: SheetOptions,
): readonly Mark[] {
  const { layout } = options.words.sheet;
  const first = box.x + box.width * 0.4;
  const second = box.x + box.width * 0.78;
  const { y, height } = box;
  const left = { x: box.x + 2.5, width: first - box.x - 5 };
  const middle = { x: first + 2.5, width: second - first - 5 };
  const right = { x: second + 2.5, width: box.x + box.width - second - 5 };
  const lines = (said: readonly string[], column: typeof left, top: number): readonly Mark[] =>
    said.map((one, i) =>
      text(shortened(one, SMALL_MM, column.width), column.x, top + i * 4.4, { height: SMALL_MM }),
    );
  const name = printable(job.name).text || layout.noName;
  const names = wrapped(name, NAME_MM, left.width);
  const large = names.length === 1;
  const nameHeight = large ? NAME_MM : 2.9;
  const nameLines = large ? names : wrapped(name, nameHeight, left.width);
  const shown =
    nameLines.length <= 2
      ? nameLines
      : [nameLines[0]!, shortened(nameLines.slice(1).join(' '), nameHeight, left.width)];
  const site = wrapped(printable(job.site).text, SMALL_MM, left.width);
  const siteLines =
    site.length <= 2 ? site : [site[0]!, shortened(site.slice(1).join(' '), SMALL_MM, left.width)];
  const siteTop = y + 6.5 + shown.length * (nameHeight + 1.6) - (nameHeight + 1.6) + 4.8;
  return [
    frame(box, 'frame'),
    line(first, y, first, y + height, 'hairline'),
    line(second, y, second, y + height, 'hairline'),
    ...shown.map((one, i) =>
      text(shortened(one, nameHeight, left.width), left.x, y + 6.5 + i * (nameHeight + 1.6), {
        height: nameHeight,
        style: 'title',
      }),
    ),
    ...lines(siteLines, left, siteTop),
    ...(facts.scale
      ? [
          text(`${layout.scale}  ${facts.scale}`, middle.x, y + 5.5, {
            height: 3.2,
            style: 'title',
          }),
        ]
      : [
          text(shortened(facts.sheet, 3.2, middle.width), middle.x, y + 5.5, {
            height: 3.2,
            style: 'title',
          }),
        ]),
    ...lines(
      [...(facts.scale ? [layout.figuresRule, layout.sizes] : []), layout.units[job.units]],
      middle,
      y + 10.3,
    ),
    text(layout.page(facts.page, facts.pages), right.x, y + 5.5, { height: 3.2, style: 'title' }),
    ...lines(
      [
        facts.scale ? facts.sheet : '',
        options.revision ? `${layout.revision} ${printable(options.revision).text}` : '',
        options.date ? `${layout.date} ${printable(options.date).text}` : '',
      ].filter((one) => one !== ''),
      right,
      y + 10.3,
    ),
  ];
}
