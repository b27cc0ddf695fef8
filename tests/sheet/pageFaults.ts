import { textCorners } from '../../src/drawing/bounds.ts';
import type { SheetPage } from '../../src/sheet/page.ts';
import { toPage } from '../../src/sheet/paint/steps.ts';
import { MARGIN } from '../../src/sheet/papers.ts';

/** Texts of a page that reach outside its margins (those of a plan's own part are held against its frame). */
export function outside(page: SheetPage): readonly string[] {
  return page.parts.flatMap((part) =>
    part.marks.flatMap((mark) => {
      if (mark.kind !== 'text') return [];
      const box = part.clip ?? {
        x: MARGIN,
        y: MARGIN,
        width: page.width - 2 * MARGIN,
        height: page.height - 2 * MARGIN,
      };
      const place = toPage(part);
      const isOut = textCorners(mark, part.gridPerMm)
        .map(place)
        .some(
          ({ x, y }) =>
            x < box.x - 0.3 ||
            x > box.x + box.width + 0.3 ||
            y < box.y - 0.3 ||
            y > box.y + box.height + 0.3,
        );
      return isOut ? [mark.text] : [];
    }),
  );
}

/** Texts beside the plan and on lists that lie on each other. */
export function onEachOther(page: SheetPage): readonly string[] {
  const boxes = page.parts
    .filter(({ clip }) => !clip)
    .flatMap((part) =>
      part.marks.flatMap((mark) => {
        if (mark.kind !== 'text') return [];
        const spots = textCorners(mark, part.gridPerMm).map(toPage(part));
        const xs = spots.map(({ x }) => x);
        const ys = spots.map(({ y }) => y);
        return [
          {
            text: mark.text,
            left: Math.min(...xs),
            right: Math.max(...xs),
            top: Math.min(...ys),
            bottom: Math.max(...ys),
          },
        ];
      }),
    );
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter(
        (b) =>
          a.left < b.right - 0.05 &&
          b.left < a.right - 0.05 &&
          a.top < b.bottom - 0.4 &&
          b.top < a.bottom - 0.4,
      )
      .map((b) => `“${a.text}” on “${b.text}”`),
  );
}

/** Texts whose capitals are lower than the least that is read at arm's length. Source: ISO 3098, 2.5 mm. */
export function tooSmall(page: SheetPage): readonly string[] {
  return page.parts.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' && mark.height < 2.5 ? [mark.text] : [])),
  );
}

/** Texts beside the plan and on lists that were cut to their room, but for what somebody named himself. */
export function cutShort(page: SheetPage, named: RegExp): readonly string[] {
  return page.parts
    .filter(({ clip }) => !clip)
    .flatMap(({ marks }) => marks)
    .flatMap((mark) => (mark.kind === 'text' && mark.text.endsWith('…') ? [mark.text] : []))
    .filter((said) => !named.test(said));
}
