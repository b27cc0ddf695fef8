import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { parseJob } from '../../src/job/parse.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { blankJob } from '../../src/job/start.ts';
import { jobFromLink } from '../../src/storage/link/jobLink.ts';
import { BOARD_FIGURE_KEYS } from '../../src/takeoff/boards/keys.ts';
import { FIGURE_KEYS } from '../../src/takeoff/keys.ts';
import { ORDER_FIGURE_KEYS } from '../../src/takeoff/order/keys.ts';
import { STAKE_FIGURE_KEYS } from '../../src/takeoff/stakes/keys.ts';
import { chance } from '../random/chance.ts';

const ROOT = join(import.meta.dirname, '../..');
const RECTANGLE = join(ROOT, 'tests/cases/rectangle-10x12/job.json');
let folder = '';

// Each run starts a process of its own, on a busy machine too.
vi.setConfig({ testTimeout: 60_000 });

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'takeoff-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

function run(script: 'takeoff' | 'schema', given: readonly string[], input = '') {
  const tsx = join(ROOT, 'node_modules/tsx/dist/cli.mjs');
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [tsx, join(ROOT, `src/cli/${script}.ts`), ...given],
    { encoding: 'utf8', input },
  );
  return { status, stdout, stderr };
}

function proofOf({ stdout }: { readonly stdout: string }): object {
  return JSON.parse(stdout).parts.boards.plan.proof;
}

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('takeoff', () => {
  test('JSON: figures with values, texts and workings; notes; the parts in grid units', () => {
    const { status, stdout, stderr } = run('takeoff', [RECTANGLE]);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    const said = JSON.parse(stdout);
    expect(said.job).toMatchObject({ name: 'rectangle-10x12', units: 'feet-inches' });
    const figures = said.tickets.flatMap((ticket: { figures: object[] }) => ticket.figures);
    const bags = figures.find((one: { key: string }) => one.key === 'bags');
    expect(bags).toMatchObject({
      name: 'Bags',
      value: { of: 'count', count: 59, unit: 'bag' },
      text: '59 bags',
      role: 'order',
      working: { formula: 'n = ⌈V₂ ÷ y⌉', rounding: 'up' },
    });
    expect(bags.working.text.inputs[1]).toEqual({
      name: 'One bag makes',
      value: '0.6 ft³',
      from: 'your practices',
    });
    for (const { key } of figures)
      expect([
        ...FIGURE_KEYS,
        ...BOARD_FIGURE_KEYS,
        ...STAKE_FIGURE_KEYS,
        ...ORDER_FIGURE_KEYS,
      ]).toContain(key);
    expect(said.notes[0]).toHaveProperty('text');
    expect(said.parts.mix.totalBags).toBe(59);
  });

  test('--text prints tickets, --workings what is under each figure', () => {
    const { status, stdout } = run('takeoff', [RECTANGLE, '--text']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^ {2}Bags \.+59 bags$/m);
    expect(stdout).toMatch(/^MIX$/m);
    expect(stdout).toContain('call 811');
    expect(stdout).not.toContain('n = ⌈V₂ ÷ y⌉');
    expect(run('takeoff', [RECTANGLE, '--text', '--workings']).stdout).toContain('n = ⌈V₂ ÷ y⌉');
  });

  test('- reads standard input', () => {
    const { status, stdout } = run('takeoff', ['-', '--text'], readFileSync(RECTANGLE, 'utf8'));
    expect(status).toBe(0);
    expect(stdout).toMatch(/^ {2}Bags \.+59 bags$/m);
  });

  test('--search looks for a better board plan, and tells how sure it is', () => {
    expect(proofOf(run('takeoff', [RECTANGLE]))).toEqual({ is: 'first' });
    // With no splices there is little to try: proved at once.
    const read = parseJob(readFileSync(RECTANGLE, 'utf8'));
    if (!read.ok) throw new Error('The case is a good job.');
    const { practices } = read.value;
    const whole = { ...practices, boards: { ...practices.boards, splices: false } };
    const path = file('whole.json', serializeJob({ ...read.value, practices: whole }));
    const { status, stdout, stderr } = run('takeoff', [path, '--search', '60']);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(proofOf({ stdout })).toEqual({ is: 'proved', seconds: expect.any(Number) });
  });

  test('--csv writes every table into a folder, --link prints a link to a copy of the job', () => {
    const tables = join(folder, 'new', 'tables');
    const link = ['--link', 'https://pads.example/yard/'];
    const { status, stdout, stderr } = run('takeoff', [RECTANGLE, '--csv', tables, ...link]);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    const [url, ...paths] = stdout.trimEnd().split('\n');
    expect(jobFromLink(new URL(url!).hash)).toEqual(parseJob(readFileSync(RECTANGLE, 'utf8')));
    expect(
      readdirSync(tables)
        .map((name) => join(tables, name))
        .sort(),
    ).toEqual(paths.sort());
    expect(readFileSync(join(tables, 'Figures.csv'), 'utf8')).toMatch(
      /^Mix,Bags,59 bags,59,number,to get\r$/m,
    );
  });

  test('2: a folder that can’t be written, and a link that would be too long', () => {
    const there = file('a-file', '');
    expect(run('takeoff', [RECTANGLE, '--csv', there])).toMatchObject({ status: 2, stdout: '' });
    const read = parseJob(readFileSync(RECTANGLE, 'utf8'));
    if (!read.ok) throw new Error('The case is a good job.');
    const { whole } = chance(4);
    const notes = Array.from({ length: 6_000 }, () => String.fromCodePoint(whole(0x4e00, 0x9fff)));
    const long = file('long.json', serializeJob({ ...read.value, notes: notes.join('') }));
    const { status, stdout, stderr } = run('takeoff', [long, '--link', 'https://pads.example/']);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain('Send the job file instead.');
  });

  test('1: a job whose figures are withheld', () => {
    const { status, stdout, stderr } = run('takeoff', [
      file('blank.json', serializeJob(blankJob())),
    ]);
    expect(status).toBe(1);
    expect(stderr).toContain('There is no pad or patch yet.');
    expect(
      JSON.parse(stdout).tickets.every((one: { figures: [] }) => one.figures.length === 0),
    ).toBe(true);
  });

  test.each([
    ['not JSON', '{"format": ', 'damaged'],
    ['empty', '', 'empty'],
    ['foreign', '{"a": 1}', 'isn’t a job file'],
    ['newer', '{"format": "notchpad-job", "version": 999, "job": {}}', 'newer'],
  ])('2: a file that is %s', (name, text, says) => {
    const { status, stdout, stderr } = run('takeoff', [file(`${name}.json`, text)]);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain(says);
  });

  test('2: a broken field is named with its place', () => {
    const text = readFileSync(RECTANGLE, 'utf8').replace(/"thickness": \d+/, '"thickness": 1e999');
    const { status, stderr } = run('takeoff', [file('field.json', text)]);
    expect(status).toBe(2);
    expect(stderr).toContain('job.practices.thickness: ');
  });

  test('2: a file that isn’t there', () => {
    const { status, stderr } = run('takeoff', [join(folder, 'nowhere.json')]);
    expect(status).toBe(2);
    expect(stderr).toContain('there is no such file');
  });

  test.each([[[]], [['a.json', 'b.json']], [['a.json', '--loud']]])('3: wrong use %o', (given) => {
    const { status, stdout, stderr } = run('takeoff', given);
    expect(status).toBe(3);
    expect(stdout).toBe('');
    expect(stderr).toContain('Usage:');
  });

  test('--help', () => {
    expect(run('takeoff', ['--help'])).toMatchObject({ status: 0, stderr: '' });
  });
});

describe('schema', () => {
  test('to standard output, and the same into a file', () => {
    const { status, stdout } = run('schema', []);
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toHaveProperty('$schema');
    const path = join(folder, 'schema.json');
    expect(run('schema', [path])).toMatchObject({ status: 0, stdout: '', stderr: '' });
    expect(readFileSync(path, 'utf8')).toBe(stdout);
  });

  test('into a folder that isn’t there: 2; wrong use: 3', () => {
    expect(run('schema', [join(folder, 'no', 'schema.json')]).status).toBe(2);
    expect(run('schema', ['a', 'b']).status).toBe(3);
    expect(run('schema', ['--loud']).status).toBe(3);
  });
});
