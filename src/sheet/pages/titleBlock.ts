import type { Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import { frame, line, text } from '../furniture.ts';
import { printable, shortened, wrapped } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import type { LayoutWords } from '../words/layout.ts';

export const TITLE_HEIGHT = 22;

const NAME_MM = 4.2;
const SMALL_MM = 2.5;
/** From the top of the block to its last line. */
const LAST_MM = 19.1;
const LINE_MM = 4.4;
/** So many lines a column has room for. */
const MOST_LINES = 4;
/** Where a column has one line more than the others. */
const CLOSE_MM = 3.7;

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
  const drawnBy = printable(job.title?.drawnBy ?? '').text;
  const first = box.x + box.width * 0.4;
  const second = box.x + box.width * 0.78;
  const { y, height } = box;
  const left = { x: box.x + 2.5, width: first - box.x - 5 };
  const middle = { x: first + 2.5, width: second - first - 5 };
  const right = { x: second + 2.5, width: box.x + box.width - second - 5 };
  const lines = (said: readonly string[], column: typeof left, top: number): readonly Mark[] => {
    const apart = said.length > 3 ? CLOSE_MM : LINE_MM;
    return said.map((one, i) =>
      text(shortened(one, SMALL_MM, column.width), column.x, top + i * apart, { height: SMALL_MM }),
    );
  };
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
  const author = drawnBy === '' ? '' : `${layout.drawnBy}: ${drawnBy}`;
  // Under a name and a site of one line each; else it stands with the revision.
  const isRoomy = author !== '' && shown.length + siteLines.length <= 2;
  const siteTop = y + 6.5 + shown.length * (nameHeight + 1.6) - (nameHeight + 1.6) + 4.8;
  const record = [
    revisionOf(job, layout),
    isRoomy ? '' : author,
    options.date ? `${layout.date} ${printable(options.date).text}` : '',
  ].filter((one) => one !== '');
  const called = facts.scale
    ? record.length + 2 <= MOST_LINES
      ? wrapped(facts.sheet, SMALL_MM, right.width)
      : [facts.sheet]
    : [];
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
    ...(isRoomy ? lines([author], left, y + LAST_MM) : []),
    ...(facts.scale
      ? [
          text(`${layout.scale}  ${facts.scale}`, middle.x, y + 5.5, {
            height: 3.2,
            style: 'title',
          }),
        ]
      : wrapped(facts.sheet, 3.2, middle.width).map((one, i) =>
          text(one, middle.x, y + 5.5 + i * 4.6, { height: 3.2, style: 'title' }),
        )),
    ...lines(
      [...(facts.scale ? [layout.figuresRule, layout.sizes] : []), layout.units[job.units]],
      middle,
      y + 10.3 + (facts.scale ? 0 : 4.6),
    ),
    text(layout.page(facts.page, facts.pages), right.x, y + 5.5, { height: 3.2, style: 'title' }),
    ...lines([...called.slice(0, MOST_LINES - record.length), ...record], right, y + 10.3),
  ];
}

/** The revision and the one it is printed instead of, so that nobody builds from an old sheet. */
function revisionOf({ title }: Job, layout: LayoutWords): string {
  const revision = printable(title?.revision ?? '').text;
  const replaces = printable(title?.replaces ?? '').text;
  const said = [
    revision === '' ? '' : `${layout.revision} ${revision}`,
    replaces === '' ? '' : layout.replaces(replaces),
  ];
  return said.filter((one) => one !== '').join(', ');
}
