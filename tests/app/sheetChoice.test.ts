import { expect, test } from 'vitest';
import { readChoice, type SheetChoice, withPage } from '../../src/app/sheet/choice.ts';
import { PAGE_KINDS } from '../../src/sheet/pageKinds.ts';

const FIRST: SheetChoice = {
  paper: 'letter',
  turn: null,
  scale: null,
  pages: PAGE_KINDS,
  onePage: null,
};

test('what was kept comes back, in the order of the sheet', () => {
  const kept = { paper: 'a3', turn: 'sideways', pages: ['cautions', 'layout'] };
  expect(readChoice(kept, FIRST)).toEqual({
    ...kept,
    scale: null,
    onePage: null,
    pages: ['layout', 'cautions'],
  });
});

test.each([
  ['nothing', null],
  ['a word', 'a4'],
  ['what another version kept', { paper: 'papyrus', turn: 7, pages: 'all' }],
  ['pages that there are no more', { pages: ['gone'] }],
  ['no pages', { pages: [] }],
])('%s kept leaves the first choice', (_, kept) => {
  expect(readChoice(kept, FIRST)).toEqual(FIRST);
});

test('a page is ticked and unticked; the last one stays', () => {
  const without = withPage(FIRST, 'forms', false);
  expect(without.pages).toEqual(PAGE_KINDS.filter((page) => page !== 'forms'));
  expect(withPage(without, 'forms', true)).toEqual(FIRST);
  const one = { ...FIRST, pages: ['layout'] as const };
  expect(withPage(one, 'layout', false)).toBe(one);
});
