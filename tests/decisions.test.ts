/** One test per choice that nobody should undo unknowingly. Each says why; to change the choice, change it here first. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { apply } from '../src/job/commands.ts';
import { demoJob } from '../src/job/demo.ts';
import { begin, push, redo, undo } from '../src/job/history.ts';
import type { Job } from '../src/job/job.ts';
import { parseJob } from '../src/job/parse.ts';
import { serializeJob } from '../src/job/serialize.ts';
import { lShapeJob } from '../src/job/start.ts';
import { takeoff } from '../src/takeoff/takeoff.ts';
import { tickets } from '../src/takeoff/tickets.ts';
import { FOOT, INCH, METRE, MILLIMETRE, SIXTEENTH, SIXTY_FOURTH } from '../src/units/grid.ts';
import { readSource } from './house/source.ts';
import { wasteByShare } from './published/slabs.ts';

const SRC = join(import.meta.dirname, '..', 'src');

function filesOf(room: string): readonly { readonly path: string; readonly text: string }[] {
  return readdirSync(join(SRC, room), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => ({
      path: `${room}/${path}`,
      text: readFileSync(join(SRC, room, path), 'utf8'),
    }));
}

function importsOf(path: string): readonly string[] {
  return readSource(path, readFileSync(join(SRC, path), 'utf8')).imports;
}

function anyJob(): Job {
  const made = lShapeJob(14 * FOOT, 10 * FOOT, 4 * FOOT, 3 * FOOT);
  if (!made.ok) throw new Error('the L is a good one');
  return made.value;
}

describe('the grid', () => {
  test('one grid holds sixteenths and millimetres, so no unit switch ever moves a corner', () => {
    for (const unit of [FOOT, INCH, SIXTEENTH, SIXTY_FOURTH, METRE, MILLIMETRE]) {
      expect(Number.isInteger(unit)).toBe(true);
    }
    expect(64 * SIXTY_FOURTH).toBe(INCH);
    expect(INCH * 10).toBe(MILLIMETRE * 254);
  });

  test('switching units leaves every feature the same object', () => {
    const job = anyJob();
    const switched = apply(job, { do: 'set-units', units: 'metric' });
    expect(switched.ok && switched.value.units).toBe('metric');
    expect(switched.ok && switched.value.features).toBe(job.features);
  });

  test('places are compared exactly: geometry and job know no epsilon', () => {
    const found = [...filesOf('geometry'), ...filesOf('job')].filter(({ text }) =>
      /\bEPSILON\b|\bepsilon\b/i.test(text.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '')),
    );
    expect(found.map(({ path }) => path)).toEqual([]);
  });
});

describe('commands and undo', () => {
  test('commands know nothing of undo: history is a list of jobs beside them', () => {
    const commands = ['job/commands.ts', ...filesOf('job/commands').map(({ path }) => path)];
    expect(commands.length).toBeGreaterThan(10);
    for (const path of commands) {
      expect(importsOf(path).filter((specifier) => specifier.includes('history'))).toEqual([]);
    }
  });

  test('a command leaves the job it was given as it was, and undo gives back that very job', () => {
    const job = anyJob();
    const before = JSON.stringify(job);
    const named = apply(job, { do: 'set-text', name: 'Shed pad' });
    if (!named.ok) throw new Error('a name can be set');
    expect(JSON.stringify(job)).toBe(before);
    const history = push(begin(job), named.value, 'set-text');
    expect(undo(history).now.job).toBe(job);
    expect(redo(undo(history)).now.job).toBe(named.value);
  });

  test('what can’t be done changes nothing and says why with a code, not with a sentence', () => {
    const refused = apply(anyJob(), { do: 'remove-feature', feature: 'no-such-feature' });
    expect(refused.ok ? 'done' : refused.problems.code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)+$/);
  });
});

describe('figures', () => {
  const job = demoJob();
  const counted = takeoff(job);

  test('a takeoff is plain data: it crosses to a worker and back unchanged', () => {
    expect(counted.pour).toBeDefined();
    expect(structuredClone(counted)).toEqual(counted);
  });

  test('the same job gives the same takeoff', () => {
    expect(JSON.stringify(takeoff(demoJob()))).toBe(JSON.stringify(counted));
  });

  test('waste is never inside a net: no net figure moves when the allowance does', () => {
    const nets = (waste: Job['practices']['waste']) => {
      const changed = { ...job, practices: { ...job.practices, waste } };
      return tickets(changed, takeoff(changed)).flatMap(({ figures }) =>
        figures.filter(({ role }) => role === 'net').map(({ key, value }) => ({ key, value })),
      );
    };
    const none = nets(wasteByShare(0));
    expect(none.length).toBeGreaterThan(2);
    expect(nets(wasteByShare(0.25, 9))).toEqual(none);
    expect(nets({ ...job.practices.waste, by: 'parts', spillage: 0.2 })).toEqual(none);
  });

  test('every figure opens to a formula and names a source', () => {
    const figures = tickets(job, counted).flatMap((ticket) => ticket.figures);
    expect(figures.length).toBeGreaterThan(30);
    for (const { key, working } of figures) {
      expect(working().formula, key).not.toBe('');
      expect(working().source.length, key).toBeGreaterThan(0);
    }
  });
});

describe('job files', () => {
  test('a newer file is refused whole, not half-read', () => {
    const file = JSON.parse(serializeJob(demoJob()));
    const newer = parseJob(JSON.stringify({ ...file, version: file.version + 1 }));
    expect(newer.ok ? [] : newer.problems).toHaveLength(1);
  });

  test('a file that would have to be mended to be read is refused: quantities are never guessed', () => {
    const file = JSON.parse(serializeJob(demoJob()));
    const { thickness: _, ...practices } = file.job.practices;
    const short = { ...file, job: { ...file.job, practices } };
    expect(parseJob(JSON.stringify(short)).ok).toBe(false);
  });
});

describe('painters', () => {
  test('screen, SVG and PDF paint marks: no painter figures anything of its own', () => {
    const painters = [
      ...filesOf('sketch/paint'),
      ...filesOf('sheet/paint'),
      { path: 'sheet/writeSvg.ts', text: '' },
      { path: 'sheet/paintPdf.ts', text: '' },
    ].map(({ path }) => path);
    expect(painters.length).toBeGreaterThan(6);
    for (const path of painters) {
      const figured = importsOf(path).filter((specifier) =>
        /\/takeoff\/|\/clip\.ts$/.test(specifier),
      );
      expect(figured, path).toEqual([]);
    }
  });
});

describe('offline', () => {
  test('a new version waits until the page asks: figures never change under somebody’s hands', () => {
    const text = readFileSync(join(SRC, 'app/offline/serviceWorker.ts'), 'utf8');
    const takesOver = text.indexOf('skipWaiting');
    expect(takesOver).toBeGreaterThan(text.indexOf("addEventListener('message'"));
    expect(text.lastIndexOf('skipWaiting')).toBe(takesOver);
  });
});
