import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { installed } from './ensure.mjs';

/** A folder with a lock file, and node_modules as npm leaves it. */
function withFolder(lock: object, have: object | undefined, check: (root: string) => void): void {
  const root = mkdtempSync(join(tmpdir(), 'ensure-'));
  try {
    writeFileSync(join(root, 'package-lock.json'), JSON.stringify({ packages: lock }));
    if (have) {
      mkdirSync(join(root, 'node_modules'));
      const hidden = join(root, 'node_modules', '.package-lock.json');
      writeFileSync(hidden, JSON.stringify({ packages: have }));
      for (const path of Object.keys(have)) mkdirSync(join(root, path), { recursive: true });
    }
    check(root);
  } finally {
    rmSync(root, { recursive: true });
  }
}

const LOCK = {
  '': { name: 'job' },
  'node_modules/a': { version: '1.0.0' },
  'node_modules/for-another-machine': { version: '1.0.0', optional: true },
};

test.each([
  ['nothing installed', undefined, false],
  ['all installed', { 'node_modules/a': { version: '1.0.0' } }, true],
  ['an older version', { 'node_modules/a': { version: '0.9.0' } }, false],
  ['one missing', {}, false],
])('%s', (_, have, expected) => {
  withFolder(LOCK, have, (root) => expect(installed(root)).toBe(expected));
});

test('a package whose folder was deleted is missing', () => {
  withFolder(LOCK, { 'node_modules/a': { version: '1.0.0' } }, (root) => {
    rmSync(join(root, 'node_modules', 'a'), { recursive: true });
    expect(installed(root)).toBe(false);
  });
});
