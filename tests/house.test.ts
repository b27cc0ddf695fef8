import { spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { faultsOf } from './house/faults.ts';
import { ROOMS } from './house/rules.ts';
import { readSource } from './house/source.ts';

const ROOT = join(import.meta.dirname, '..');
const SRC = join(ROOT, 'src');

function read(path: string): string {
  return readFileSync(join(ROOT, path), 'utf8');
}

/** The faults of files given as text, so that a violation can be planted. */
function planted(files: Readonly<Record<string, string>>): readonly string[] {
  return faultsOf(Object.entries(files).map(([path, text]) => readSource(path, text)));
}

describe('the house as it stands', () => {
  test('keeps every rule', () => {
    const paths = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
      .map((path) => path.split(sep).join('/'))
      .filter((path) => /\.tsx?$/.test(path));
    expect(paths.length).toBeGreaterThan(7);
    const sources = paths.map((path) => readSource(path, readFileSync(join(SRC, path), 'utf8')));
    expect(faultsOf(sources)).toEqual([]);
  });
});

describe('the rules notice', () => {
  test.each([
    ["import { job } from '../job/job.ts';", 'geometry may import units.'],
    ["import type { Job } from '../job/job.ts';", 'geometry may import units.'],
    ["export * from '../takeoff/figure.ts';", 'geometry may import units.'],
    ["export const late = () => import('../sketch/view.ts');", 'geometry may import units.'],
    ["export type Job = import('../job/job.ts').Job;", 'geometry may import units.'],
    ["new Worker(new URL('../app/worker/entry.ts', import.meta.url));", 'may import units.'],
    ["import clip from 'polygon-clipping';", 'only geometry/clip.ts may.'],
    ["import Konva from 'konva/lib/Core';", 'imports konva: only sketch may.'],
    ["import { readFileSync } from 'node:fs';", 'imports node:: only cli may.'],
    ["import lodash from 'lodash';", "the house's table doesn't know"],
    ["import { grid } from '../units/grid';", 'without its ending'],
    ['export default 1;', 'has a default export'],
    ['export const now = Date.now();', 'uses Date'],
    ['export const now: Date | null = null;', 'uses Date'],
    ['export const x = Math.random();', 'uses Math.random'],
    ['export const x = (1).toLocaleString();', 'uses .toLocaleString'],
    ['export const x = { document };', 'uses document'],
  ])('%s', (text, sentence) => {
    const faults = planted({ 'geometry/area.ts': text });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(sentence);
  });

  test('words in the markup', () => {
    const markup = '<b aria-label="Net area">{1} Area <i title={words.area}>—</i></b>';
    const faults = planted({ 'app/Area.tsx': `export const area = ${markup};` });
    expect(faults.map((fault) => fault.match(/“(.*)”/)?.[1])).toEqual(['Net area', 'Area']);
  });

  test('a barrel', () => {
    expect(planted({ 'job/index.ts': '' })[0]).toContain('is a barrel');
  });

  test('a circle, and walks round it once', () => {
    const faults = planted({
      'units/a.ts': "import { b } from './b.ts';",
      'units/b.ts': "import { c } from './c.ts';",
      'units/c.ts': "import { a } from './a.ts';",
    });
    expect(faults).toEqual([
      'Imports go in a circle: units/a.ts → units/b.ts → units/c.ts → units/a.ts.',
    ]);
  });

  test('nothing in a file that keeps them', () => {
    const text = `
      import { grid } from '../units/grid.ts';
      // Date and window in a comment, 'document' in a text, and a member of that name:
      export const frame = { window: grid, text: 'document' }.window;
      // A parameter of that name:
      export function inside(window: number): number { return window + 1; }
      export function outside({ document, self = 1 }: Sizes): number { return document + self; }`;
    expect(planted({ 'geometry/area.ts': text, 'units/grid.ts': '' })).toEqual([]);
  });
});

describe('the linter keeps the one-way rule too', () => {
  const settings = JSON.parse(read('.biome.json'));

  test.each(Object.entries(ROOMS))('%s: its settings say what the table says', (room, may) => {
    const override = settings.overrides.find(({ includes }: { includes: readonly string[] }) =>
      includes.includes(`**/src/${room}/**`),
    );
    const shut = Object.keys(ROOMS).filter(
      (other) => other !== room && !(may as readonly string[]).includes(other),
    );
    const rule = override?.linter.rules.style.noRestrictedImports;
    expect(rule.level).toBe('error');
    expect(rule.options.patterns[0].group).toEqual(shut.map((other) => `**/${other}/**`));
  });

  test('it refuses a planted import, and lets a good one pass', () => {
    const folder = mkdtempSync(join(tmpdir(), 'house-'));
    try {
      mkdirSync(join(folder, 'src', 'geometry'), { recursive: true });
      copyFileSync(join(ROOT, '.biome.json'), join(folder, '.biome.json'));
      const lint = (text: string) => {
        writeFileSync(join(folder, 'src', 'geometry', 'planted.ts'), text);
        const biome = join(ROOT, 'node_modules/@biomejs/biome/bin/biome');
        const run = spawnSync(process.execPath, [biome, 'lint', '.'], {
          cwd: folder,
          encoding: 'utf8',
        });
        return { status: run.status, says: run.stdout + run.stderr };
      };
      const bad = lint("import { draw } from '../drawing/plan.ts';\nexport const area = draw;\n");
      expect(bad.says).toContain('Imports go one way: geometry may import units.');
      expect(bad.status).not.toBe(0);
      const good = lint("import { INCH } from '../units/grid.ts';\nexport const area = INCH;\n");
      expect(good).toMatchObject({ status: 0 });
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe('the project folder', () => {
  test('the lock file names no registry host', () => {
    const { packages } = JSON.parse(read('package-lock.json'));
    const entries = Object.entries<Record<string, unknown>>(packages);
    expect(entries.length).toBeGreaterThan(100);
    expect(entries.filter(([, entry]) => 'resolved' in entry)).toEqual([]);
  });

  test('the top level holds only what a newcomer expects there', () => {
    const files = spawnSync('git', ['ls-files'], { cwd: ROOT, encoding: 'utf8' }).stdout;
    const top = new Set(
      files
        .split('\n')
        .filter(Boolean)
        .map((path) => path.split('/')[0] ?? ''),
    );
    const known = [
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'vite.config.ts',
      'index.html',
      'src',
      'tests',
      'README.md',
      'DEVELOPERS.md',
      'LICENSE',
    ];
    expect([...top].filter((name) => !name.startsWith('.') && !known.includes(name))).toEqual([]);
  });

  test.runIf(existsSync(join(ROOT, 'DEVELOPERS.md')))('DEVELOPERS.md shows the same table', () => {
    const text = read('DEVELOPERS.md');
    for (const [room, may] of Object.entries(ROOMS)) {
      const row = text.split('\n').find((line) => line.startsWith(`| \`${room}/\` |`));
      expect(row, `a row for ${room}`).toBeDefined();
      const last = row?.split('|').at(-2)?.trim();
      expect(last).toBe(may.length > 0 ? may.join(', ') : '–');
    }
  });
});
