import { expect, test } from 'vitest';
import { readTakeoffGiven } from '../../src/cli/takeoffGiven.ts';

test('a file alone is read as JSON, with first answers only', () => {
  const job = { is: 'job', file: 'a.json', text: false, workings: false, seconds: 0 };
  expect(readTakeoffGiven(['a.json']).asks).toEqual(job);
});

test.each([
  [['--search', '2.5', 'a.json', '--text'], { seconds: 2.5, text: true, file: 'a.json' }],
  [['-', '--search', '0'], { seconds: 0, file: '-' }],
  [['a.json', '--text', '--workings'], { text: true, workings: true }],
])('%j', (given, says) => {
  expect(readTakeoffGiven(given).asks).toMatchObject(says);
});

test.each([
  [['a.json', '--search'], 'not “”'],
  [['--search', 'a.json'], 'not “a.json”'],
  [['a.json', '--search', '-1'], 'not “-1”'],
  [['a.json', '--search', 'Infinity'], 'not “Infinity”'],
  [['a.json', '--search', '3601'], 'from 0 to 3600'],
  [['a.json', '--csv'], '--csv takes a folder'],
  [['a.json', '--csv', '--text'], '--csv takes a folder'],
  [['a.json', '--link', 'pads'], 'not “pads”'],
  [['a.json', '--link', 'file:///a'], 'not “file:///a”'],
  [['a.json', '--loud'], '--loud'],
  [['a.json', '--language', 'xx'], 'en, es, not “xx”'],
  [['a.json', '--language'], 'not “”'],
  [[], 'one job file'],
  [['a.json', 'b.json'], 'one job file'],
])('%j is wrong', (given, says) => {
  const read = readTakeoffGiven(given).asks;
  expect(read.is === 'wrong' && read.why).toContain(says);
});

test('help goes before all else', () => {
  expect(readTakeoffGiven(['--search', '--help']).asks).toEqual({ is: 'help' });
});

test('the language holds for all that is answered, wherever it stands', () => {
  const asked = readTakeoffGiven(['--language', 'es', 'a.json', '--text']);
  expect(asked.asks).toMatchObject({ is: 'job', file: 'a.json', text: true });
  expect(asked.words.stations.ground).toBe('Terreno');
  const wrong = readTakeoffGiven(['a.json', '--loud', '--language', 'es']).asks;
  expect(wrong.is === 'wrong' && wrong.why).toBe('No hay opción --loud.');
});
