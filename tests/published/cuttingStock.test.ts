import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadSolver } from '../../src/takeoff/solver/highs.ts';
import type { Solver } from '../../src/takeoff/solver/mip.ts';
import { reference } from '../references/references.ts';
import { leastPrice } from '../takeoff/boards/leastPrice.ts';
import { demand, problem, yard } from '../takeoff/boards/problems.ts';

/** The data stands beside the project, not in it. */
const DATA = join(import.meta.dirname, '../../../shared/data/binpack');
const there = existsSync(DATA);
const skipped = there ? '' : ` (skipped where ../shared/data/binpack is not there)`;

function read(name: string): string {
  return readFileSync(join(DATA, name), 'utf8');
}

function rows(name: string): readonly (readonly string[])[] {
  return read(name)
    .split('\n')
    .filter((line) => line && !line.startsWith('#'))
    .slice(1)
    .map((line) => line.split(','));
}

/** So many of each length, from boards of one length at a price of one each. */
function packing(capacity: number, lengths: readonly number[]) {
  const runs = lengths.map((length, at) => demand(`r${at}`, length));
  return problem(runs, [yard('y', capacity, 1)]);
}

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

test.skipIf(!there)(`the master rolls of 5,600 mm: 73 of them${skipped}`, () => {
  reference('cutting-stock-5600');
  const lengths = rows('csp_paper_5600.csv').flatMap(([length, count]) =>
    Array.from({ length: Number(count) }, () => Number(length)),
  );
  expect(lengths).toHaveLength(219);
  expect(leastPrice(packing(5600, lengths), solver)).toMatchObject({ least: 73, end: 'proved' });
});

describe.skipIf(!there)(`bins of 150${skipped}`, () => {
  // Of the ten, those that take no time.
  const chosen = ['u120_01', 'u120_03', 'u120_04', 'u120_06', 'u120_07', 'u120_08'];
  const optimum = there
    ? rows('binpack_optimum.csv').filter(([name]) => chosen.includes(name!))
    : [];
  const packings = new Map<string, readonly number[]>();
  beforeAll(() => {
    const tokens = read('binpack1_first10.txt').split(/\s+/).filter(Boolean).slice(1);
    while (tokens.length > 0) {
      const [name, , items] = tokens.splice(0, 4);
      packings.set(name!, tokens.splice(0, Number(items)).map(Number));
    }
  });

  test.each(optimum.map((row) => [row[0]!, Number(row.at(-1))] as const))(
    '%s: %i bins',
    (name, bins) => {
      reference('or-library-bin-packing');
      const lengths = packings.get(name)!;
      expect(lengths).toHaveLength(120);
      const { least, end } = leastPrice(packing(150, lengths), solver);
      expect({ least, end }).toEqual({ least: bins, end: 'proved' });
    },
    60_000,
  );
});
