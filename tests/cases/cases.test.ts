import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseJob } from '../../src/job/parse.ts';
import { en } from '../../src/sheet/words/en.ts';
import { sayQuantity } from '../../src/sheet/words/say.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { tickets } from '../../src/takeoff/tickets.ts';

/** By figure: the text that must stand on the ticket, and how it was worked out by hand. */
type Expected = Readonly<Record<string, readonly [text: string, why: string]>>;

const CASES = readdirSync(import.meta.dirname, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

function read(name: string, file: string): string {
  return readFileSync(join(import.meta.dirname, name, file), 'utf8');
}

test('there are cases', () => {
  expect(CASES.length).toBeGreaterThanOrEqual(5);
});

describe.each(CASES)('%s', (name) => {
  const parsed = parseJob(read(name, 'job.json'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const job = parsed.value;
  const result = takeoff(job);
  const said = new Map(
    tickets(job, result).flatMap(({ figures }) =>
      figures.map((one) => [one.key as string, sayQuantity(en, one.value, job.units)] as const),
    ),
  );

  test('nothing stands in the way, and there is a sketch', () => {
    expect(result.notes.filter(({ weight }) => weight === 'stop')).toEqual([]);
    expect(existsSync(join(import.meta.dirname, name, 'sketch.txt'))).toBe(true);
  });

  const expected: Expected = JSON.parse(read(name, 'expected.json'));
  test.each(Object.entries(expected))('%s', (key, [text, why]) => {
    expect(said.get(key), why).toBe(text);
  });
});
