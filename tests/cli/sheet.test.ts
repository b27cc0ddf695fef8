import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { serializeJob } from '../../src/job/serialize.ts';
import { blankJob } from '../../src/job/start.ts';
import { readPdf } from '../sheet/pdfReader.ts';

const ROOT = join(import.meta.dirname, '../..');
const RECTANGLE = join(ROOT, 'tests/cases/rectangle-10x12/job.json');
let folder = '';

// Each run starts a process of its own, on a busy machine too.
vi.setConfig({ testTimeout: 60_000 });

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'sheet-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** Run from elsewhere, as nobody need stand in the project's folder. */
function run(given: readonly string[]) {
  const tsx = join(ROOT, 'node_modules/tsx/dist/cli.mjs');
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [tsx, join(ROOT, 'src/cli/sheet.ts'), ...given],
    { encoding: 'utf8', cwd: folder },
  );
  return { status, stdout, stderr };
}

describe('sheet', () => {
  test('a PDF with the pages, paper and scale that were asked for', async () => {
    const out = join(folder, 'sheet.pdf');
    const paper = ['--paper', 'tabloid', '--turn', 'upright', '--scale', '1/2"'];
    const asked = ['--out', out, ...paper, '--pages', 'layout', '--date', '3 May'];
    expect(run([RECTANGLE, ...asked])).toEqual({ status: 0, stdout: '', stderr: '' });
    const pages = await readPdf(readFileSync(out));
    expect(pages.length).toBeGreaterThan(0);
    expect(pages[0]!.size).toEqual([792, 1224]);
    for (const said of ['rectangle-10x12', '1/2" = 1\'-0"', '3 May']) {
      expect(pages[0]!.text).toContain(said);
    }
  });

  test('an SVG a page', () => {
    expect(run([RECTANGLE, '--out', join(folder, 'a.svg'), '--pages', 'layout']).status).toBe(0);
    expect(readFileSync(join(folder, 'a-1.svg'), 'utf8')).toContain('viewBox="0 0 215.9 279.4"');
    expect(existsSync(join(folder, 'a.svg'))).toBe(false);
  });

  test('1: a job whose figures are withheld is drawn, and says why', async () => {
    const path = join(folder, 'blank.json');
    writeFileSync(path, serializeJob(blankJob()));
    const out = join(folder, 'blank.pdf');
    const { status, stderr } = run([path, '--out', out, '--language', 'es']);
    expect(status).toBe(1);
    expect(stderr).toContain('Algunas cantidades no se dan:');
    const pages = await readPdf(readFileSync(out));
    expect(pages[0]!.text).toContain('Todavía no hay nada dibujado.');
  });

  test('2: a file that isn’t there, and a folder that isn’t', () => {
    expect(run([join(folder, 'no.json'), '--out', join(folder, 'b.pdf')]).status).toBe(2);
    const { status, stderr } = run([RECTANGLE, '--out', join(folder, 'no', 'b.pdf')]);
    expect(status).toBe(2);
    expect(stderr).toContain('can’t be written');
  });

  test('3: a scale that isn’t one of the job’s, with those that are', () => {
    const { status, stderr } = run([RECTANGLE, '--out', join(folder, 'c.pdf'), '--scale', '1:7']);
    expect(status).toBe(3);
    expect(stderr).toContain('1/4" = 1\'-0"');
    expect(stderr).toContain('Usage:');
  });
});
