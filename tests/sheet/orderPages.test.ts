import { describe, expect, test } from 'vitest';
import { drawingWords } from '../../src/drawing/words/byLanguage.ts';
import { USUAL_TERMS } from '../../src/drawing/words/terms.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { TASKS } from '../../src/job/order.ts';
import { orderOf } from '../../src/job/orderDefaults.ts';
import { withPrices } from '../../src/job/prices.ts';
import { layoutSheet } from '../../src/sheet/layoutSheet.ts';
import type { SheetPage } from '../../src/sheet/page.ts';
import { PAGE_KINDS, type PageKind, USUAL_PAGES } from '../../src/sheet/pageKinds.ts';
import { sheetWords } from '../../src/sheet/words/byLanguage.ts';
import { priceItems } from '../../src/takeoff/price/items.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { formatMoney } from '../../src/units/money.ts';

const words = { sheet: sheetWords('en', USUAL_TERMS), drawing: drawingWords('en', USUAL_TERMS) };

function textsOf(pages: readonly SheetPage[]): readonly string[] {
  return pages.flatMap(({ parts }) =>
    parts.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
    ),
  );
}

function printed(job: Job, pages?: readonly PageKind[]): readonly SheetPage[] {
  const options = { paper: 'letter' as const, words, ...(pages ? { pages } : {}) };
  return layoutSheet(job, takeoff(job), options);
}

/** Everything priced, hours typed: 417.77 an item, so that no sum is like another. */
function bidJob(): Job {
  const job = demoJob();
  const items = priceItems(job, takeoff(job).order!);
  const rules = orderOf(job.practices);
  return withPrices(
    {
      ...job,
      practices: {
        ...job.practices,
        order: {
          ...rules,
          bid: {
            ...rules.bid,
            overhead: 0.1,
            profit: 0.2,
            terms: 'Half to start.',
            exclusions: 'Spoils.',
          },
        },
      },
      bid: {
        scope: 'A landing, broomed.',
        hours: TASKS.map((task, i) => ({ task, hours: 3 + i })),
        extras: [],
      },
    },
    items.map(({ item }, i) => ({ item, price: 41_777 + i * 13 })),
  );
}

describe('the customer’s proposal', () => {
  const job = bidJob();
  const { bid } = takeoff(job).order!;
  const said = textsOf(printed(job, ['proposal'])).join('\n');

  test('has the work, what is not in it, the terms and the price', () => {
    for (const one of ['A landing, broomed.', 'Spoils.', 'Half to start.']) {
      expect(said).toContain(one);
    }
    expect(said).toContain(formatMoney(bid!.price, '$'));
  });

  test('has no other money, no hour and no share on it', () => {
    expect(said.match(/\$\d/g)).toHaveLength(1);
    expect(said).not.toContain('%');
    for (const amount of [bid!.materials, bid!.labour, bid!.overhead, bid!.profit]) {
      expect(said).not.toContain(formatMoney(amount, ''));
    }
  });

  test('is printed only when it is asked for', () => {
    expect(USUAL_PAGES).toEqual(PAGE_KINDS.filter((one) => one !== 'proposal'));
    const title = words.sheet.layout.proposal.title;
    expect(printed(job).some((page) => page.title.includes(title))).toBe(false);
  });

  test('without a bid says so, and names no price', () => {
    const bare = textsOf(printed(demoJob(), ['proposal'])).join('\n');
    expect(bare).toContain(words.sheet.layout.proposal.noPrice.slice(0, 30));
    expect(bare).not.toMatch(/\$\d/);
  });
});

describe('the page of the order', () => {
  test('has every line with its count and its unit, and nothing of the bid', () => {
    const job = bidJob();
    const { lines, bid } = takeoff(job).order!;
    const said = textsOf(printed(job, ['load']));
    expect(said).toContain(words.sheet.tables['order-list']);
    for (const { is } of lines) {
      expect(said.some((one) => one.startsWith(words.sheet.terms[is]))).toBe(true);
    }
    expect(said.join('\n')).toMatch(/\d+ bags/);
    expect(said.join('\n')).not.toContain(formatMoney(bid!.price, '$'));
    expect(said).not.toContain(words.sheet.figures['bid-labour']);
  });

  test('a job without a pour has none', () => {
    const blank = { ...demoJob(), features: [] };
    expect(textsOf(printed(blank, ['load']))).not.toContain(words.sheet.tables['order-list']);
  });
});
