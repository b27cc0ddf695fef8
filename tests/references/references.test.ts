import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { sources } from '../../src/sheet/words/sourcesEn.ts';
import { REFERENCES } from './references.ts';

const ROOT = join(import.meta.dirname, '../..');

function textsUnder(folder: string): readonly string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => readFileSync(join(ROOT, folder, path), 'utf8'));
}

const src = textsUnder('src');
const published = textsUnder('tests').filter((text) => text.includes("reference('"));

/** Every id that src or a test cites. */
function cited(): ReadonlySet<string> {
  return new Set([
    ...src.flatMap((text) => [...text.matchAll(/@source ([\w-]+)/g)].map((found) => found[1]!)),
    ...published.flatMap((text) =>
      [...text.matchAll(/reference\('([\w-]+)'\)/g)].map((found) => found[1]!),
    ),
  ]);
}

describe('published references', () => {
  const ids = REFERENCES.map(({ id }) => id);

  test.each(REFERENCES.map((one) => [one.id, one] as const))('%s is whole', (id, one) => {
    const text = readFileSync(join(import.meta.dirname, `${id}.json`), 'utf8');
    expect(JSON.parse(text).id).toBe(id);
    for (const field of ['title', 'issuer', 'edition', 'where', 'says'] as const) {
      expect(one[field].length, field).toBeGreaterThan(0);
    }
    expect(['seen', 'memory']).toContain(one.read);
  });

  test('every citation resolves', () => {
    expect([...cited()].filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('every reference is cited', () => {
    expect(ids.filter((id) => !cited().has(id))).toEqual([]);
  });

  test('every source that a working names is a reference, or one of the three honest words', () => {
    const honest = ['common-practice', 'geometry', 'user'];
    expect(Object.keys(sources).filter((id) => !honest.includes(id) && !ids.includes(id))).toEqual(
      [],
    );
  });
});
