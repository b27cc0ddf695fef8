import { expect, test } from 'vitest';
import { readSheetGiven } from '../../src/cli/sheetGiven.ts';

test('a file and where to write are enough', () => {
  const { asks } = readSheetGiven(['a.json', '--out', 'a.pdf']);
  expect(asks).toEqual({
    is: 'sheet',
    file: 'a.json',
    out: 'a.pdf',
    onePage: false,
    both: false,
    seconds: 0,
  });
});

test('every option, in any order; pages in the order of the sheet', () => {
  const given = ['--paper', 'a3', '--pages', 'cautions,layout', '-', '--turn', 'sideways'];
  const more = [
    '--scale',
    '1:20',
    '--date',
    '3 May',
    '--search',
    '2',
    '--out',
    'A.SVG',
    '--one-page',
    '--both',
  ];
  expect(readSheetGiven([...given, ...more]).asks).toEqual({
    is: 'sheet',
    file: '-',
    out: 'A.SVG',
    paper: 'a3',
    turn: 'sideways',
    scale: '1:20',
    pages: ['layout', 'cautions'],
    onePage: true,
    both: true,
    date: '3 May',
    seconds: 2,
  });
});

test.each([
  [['a.json'], '.pdf or .svg'],
  [['a.json', '--out', 'a.png'], '.pdf or .svg'],
  [['--out', 'a.pdf'], 'one job file'],
  [['a.json', '--out', 'a.pdf', '--paper', 'legal'], 'letter, tabloid, a4, a3, not “legal”'],
  [['a.json', '--out', 'a.pdf', '--turn'], 'not “”'],
  [['a.json', '--out', 'a.pdf', '--pages', 'layout,maps'], 'not “maps”'],
  [['a.json', '--out', 'a.pdf', '--search', 'long'], 'not “long”'],
  [['a.json', '--out', 'a.pdf', '--loud'], '--loud'],
  [['a.json', '--out', 'a.pdf', '--language', 'xx'], 'not “xx”'],
])('%j is wrong', (given, says) => {
  const { asks } = readSheetGiven(given);
  expect(asks.is === 'wrong' && asks.why).toContain(says);
});
