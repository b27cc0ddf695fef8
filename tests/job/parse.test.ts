import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import type { BagMix } from '../../src/job/job.ts';
import { parseJob } from '../../src/job/parse.ts';
import { JOB_PROBLEMS } from '../../src/job/problems.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { blankJob, lShapeJob } from '../../src/job/start.ts';
import { numbersFrom } from './randomCommands.ts';

const FILES = join(import.meta.dirname, '..', 'files');
const SAMPLE = readFileSync(join(FILES, 'v1-sample.json'), 'utf8');

/** The sample file with one thing put in place of another, by path. */
function edited(path: readonly (string | number)[], value: unknown): string {
  const file: unknown = JSON.parse(SAMPLE);
  let at = file;
  for (const key of path.slice(0, -1)) at = Reflect.get(Object(at), key);
  const last = path.at(-1) ?? '';
  if (value === undefined) Reflect.deleteProperty(Object(at), last);
  else Reflect.set(Object(at), last, value);
  return JSON.stringify(file);
}

function problemsOf(text: string): readonly string[] {
  const read = parseJob(text);
  if (read.ok) return [];
  return read.problems.map(({ code, where }) => (where ? `${code} ${where}` : code));
}

describe('files of every version ever shipped', () => {
  test('open', () => {
    const files = readdirSync(FILES).filter((name) => /^v\d+-.*\.json$/.test(name));
    expect(files.length).toBeGreaterThanOrEqual(3);
    for (const name of files) {
      expect([name, problemsOf(readFileSync(join(FILES, name), 'utf8'))]).toEqual([name, []]);
    }
  });

  test('version 1 holds what it held', () => {
    expect(parseJob(SAMPLE)).toMatchObject({
      ok: true,
      value: { name: 'Side yard landing', units: 'feet-inches' },
    });
    const blank = readFileSync(join(FILES, 'v1-blank.json'), 'utf8');
    expect(parseJob(blank)).toMatchObject({ ok: true, value: { features: [], nextId: 1 } });
    const ell = lShapeJob(1_280_000, 960_000, 480_000, 320_000);
    expect(parseJob(readFileSync(join(FILES, 'v1-metric-ell.json'), 'utf8'))).toMatchObject({
      ok: true,
      value: { units: 'metric', features: ell.ok ? ell.value.features : [] },
    });
  });
});

test('version 2 holds what it held: boards, a buried line, a stake set by hand', () => {
  const file = (name: string) => parseJob(readFileSync(join(FILES, name), 'utf8'));
  const { lumber } = demoJob();
  expect(file('v2-sample.json')).toMatchObject({
    ok: true,
    value: { name: 'Side yard landing', lumber, handStakes: [{ is: 'pinned' }] },
  });
  const read = file('v2-sample.json');
  const kinds = read.ok ? read.value.features.map(({ kind }) => kind) : [];
  expect(kinds).toContain('utility-line');
  expect(file('v2-blank.json')).toMatchObject({
    ok: true,
    value: { features: [], units: 'metric' },
  });
});

test('version 3 holds what it held: a joint, weather, ground readings, prices, a bid, a pour begun', () => {
  const file = (name: string) => parseJob(readFileSync(join(FILES, name), 'utf8'));
  expect(file('v3-sample.json')).toMatchObject({
    ok: true,
    value: {
      title: { revision: 'B', north: 20 },
      practices: {
        joints: { layout: 'by-hand' },
        order: { prices: [{ item: 'one-short', price: 2500 }] },
      },
      weather: { air: 30, humidity: 0.4, sky: 'sun' },
      ground: { readings: [{ depth: 34_544 }, { depth: 32_512, at: { x: 406_400, y: 325_120 } }] },
      bid: { hours: [{ task: 'forms', hours: 4 }], extras: [{ name: 'Fuel', price: 1800 }] },
      pourLog: { entries: [{ is: 'batch', bags: [{ bags: 3 }, { bags: 1 }] }] },
    },
  });
  const read = file('v3-sample.json');
  expect(read.ok && read.value.features.at(-1)).toMatchObject({ kind: 'joint', joint: 'control' });
  expect(file('v3-blank.json')).toMatchObject({ ok: true, value: { features: [] } });
});

describe('written and read', () => {
  test('the sample job comes back the same', () => {
    expect(parseJob(serializeJob(demoJob()))).toEqual({ ok: true, value: demoJob() });
  });

  test('the same job is the same text, whichever way it was put together', () => {
    const shuffled = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(shuffled);
      if (typeof value !== 'object' || value === null) return value;
      const entries = Object.entries(value).reverse();
      return Object.fromEntries(entries.map(([key, part]) => [key, shuffled(part)]));
    };
    const other = shuffled(demoJob()) as ReturnType<typeof demoJob>;
    expect(JSON.stringify(other)).not.toBe(JSON.stringify(demoJob()));
    expect(serializeJob(other)).toBe(serializeJob(demoJob()));
  });

  test('a byte order mark in front is no matter', () => {
    expect(problemsOf(`\uFEFF${SAMPLE}`)).toEqual([]);
  });

  test('any text in the name', () => {
    const name = 'Ω "quoted" \\ \u2028 \ud83d\ude00 \u0000 __proto__';
    const read = parseJob(serializeJob({ ...blankJob(), name }));
    expect(read).toMatchObject({ ok: true, value: { name } });
  });
});

describe('not a file of ours', () => {
  test.each([
    ['', 'file-empty'],
    ['  \n', 'file-empty'],
    ['{"format":', 'file-not-json'],
    ['NaN', 'file-not-json'],
    ['{"format":"notchpad-job","version":1,"job":{"nextId":NaN}}', 'file-not-json'],
    ['null', 'file-not-ours'],
    ['[]', 'file-not-ours'],
    ['"notchpad-job"', 'file-not-ours'],
    ['{"type":"FeatureCollection","features":[]}', 'file-not-ours'],
    ['{"format":"another","version":1,"job":{}}', 'file-not-ours'],
    ['{"format":"notchpad-job","version":99,"job":{}}', 'file-newer version'],
    ['{"format":"notchpad-job","version":0,"job":{}}', 'file-version version'],
    ['{"format":"notchpad-job","version":"1","job":{}}', 'file-version version'],
    ['{"format":"notchpad-job","version":1.5,"job":{}}', 'file-version version'],
    ['{"format":"notchpad-job","version":1e999,"job":{}}', 'file-version version'],
    ['{"format":"notchpad-job","version":1}', 'field-missing job'],
    ['{"format":"notchpad-job","version":1,"job":null}', 'field-type job'],
    ['{"format":"notchpad-job","version":1,"job":[]}', 'field-type job'],
  ])('%s', (text, problem) => {
    expect(problemsOf(text)).toEqual([problem]);
  });
});

describe('a broken field is named with its place', () => {
  test.each([
    [['job', 'name'], undefined, 'field-missing job.name'],
    [['job', 'name'], 5, 'field-type job.name'],
    [['job', 'name'], 'x'.repeat(201), 'field-long job.name'],
    [['job', 'colour'], 'red', 'field-unknown job.colour'],
    [['job', 'units'], 'furlongs', 'field-choice job.units'],
    [['job', 'nextId'], 3, 'field-next-id job.nextId'],
    [['job', 'practices', 'thickness'], 0, 'field-range job.practices.thickness'],
    [['job', 'practices', 'thickness'], -8128, 'field-range job.practices.thickness'],
    [['job', 'practices', 'thickness'], 12.5, 'field-type job.practices.thickness'],
    [['job', 'practices', 'thickness'], 'NaN', 'field-type job.practices.thickness'],
    [['job', 'practices', 'waste', 'share'], 1.5, 'field-range job.practices.waste.share'],
    [['job', 'practices', 'mix', 'mixes'], [], 'field-none job.practices.mix.mixes'],
    [
      ['job', 'practices', 'mix', 'mixes', 0, 'yield'],
      0,
      'size-not-positive job.practices.mix.mixes[0].yield',
    ],
    [
      ['job', 'practices', 'mix', 'mixes', 1, 'id'],
      'regular',
      'field-id-twice job.practices.mix.mixes[1].id',
    ],
    [
      ['job', 'practices', 'mix', 'blend', 'main'],
      'lost',
      'field-no-such-mix job.practices.mix.blend.main',
    ],
    [['job', 'practices', 'mesh', 'lap'], 320_000, undefined],
    [['job', 'practices', 'mesh', 'lap'], -1, 'field-range job.practices.steel.mesh.lapEnds'],
    [['job', 'practices', 'mesh', 'sheetWidth'], 0, 'field-range job.meshStock.yard[0].width'],
    [['job', 'practices', 'mesh'], 7, 'field-missing job.practices.steel'],
    [['job', 'features', 0, 'kind'], 'swimming-pool', 'field-choice job.features[0].kind'],
    [['job', 'features', 0, 'kind'], undefined, 'field-missing job.features[0].kind'],
    [['job', 'features', 0, 'shape'], {}, 'field-missing job.features[0].shape.form'],
    [['job', 'features', 0, 'shape', 'closed'], false, 'field-not-closed job.features[0].shape'],
    [['job', 'features', 0, 'id'], 'f20', 'field-id-twice job.features[4].id'],
    [['job', 'features', 0, 'id'], 'a b', 'field-id job.features[0].id'],
    [
      ['job', 'features', 0, 'shape', 'corners', 1, 'x'],
      null,
      'field-type job.features[0].shape.corners[1].x',
    ],
    [
      ['job', 'features', 0, 'shape', 'corners', 1, 'x'],
      700_000_000,
      'too-far job.features[0].shape.corners[1]',
    ],
    [
      ['job', 'features', 0, 'shape', 'corners', 1, 'x'],
      70_000_000,
      'too-large job.features[0].shape',
    ],
    [
      ['job', 'features', 4, 'shape', 'corners', 5, 'on', 'feature'],
      'f99',
      'attachment-lost job.features[4].shape',
    ],
    [
      ['job', 'features', 4, 'shape', 'corners', 5, 'on', 't'],
      1.01,
      'field-range job.features[4].shape.corners[5].on.t',
    ],
    [['job', 'features', 6, 'shape', 'diameter'], 0, 'size-not-positive job.features[6].shape'],
  ] as const)('%j = %j', (path, value, problem) => {
    expect(problemsOf(edited(path, value))[0]).toBe(problem);
  });

  test('a bag’s least water over its most, a final set before the initial one', () => {
    const job = demoJob();
    const { mix } = job.practices;
    const broken = (part: Partial<BagMix>) => {
      const mixes = mix.mixes.map((bag) => ({ ...bag, ...part }));
      return problemsOf(
        serializeJob({ ...job, practices: { ...job.practices, mix: { ...mix, mixes } } }),
      );
    };
    expect(broken({ water: { least: 2, most: 2 } })).toEqual([]);
    expect(broken({ water: { least: 3, most: 2 } })[0]).toBe(
      'field-order job.practices.mix.mixes[0].water',
    );
    expect(broken({ set: { initial: 60, final: 59, from: 'bag' } })[0]).toBe(
      'field-order job.practices.mix.mixes[0].set',
    );
  });

  test('a board without length, an id for two boards, a utility line that goes round', () => {
    const brokenBy = (breaks: (job: ReturnType<typeof JSON.parse>) => void) => {
      const file = JSON.parse(serializeJob(demoJob()));
      breaks(file.job);
      return problemsOf(JSON.stringify(file));
    };
    expect(
      brokenBy(({ lumber }) => {
        lumber.yard[1].length = 0;
      }),
    ).toEqual(['field-range job.lumber.yard[1].length']);
    expect(
      brokenBy(({ lumber }) => {
        lumber.yard[1].id = lumber.yard[0].id;
      }),
    ).toEqual(['field-id-twice job.lumber.yard[1].id']);
    expect(
      brokenBy(({ features }) => {
        features[0] = { ...features[0], kind: 'utility-line', service: 'gas' };
      }),
    ).toEqual(['field-not-open job.features[0].shape']);
  });

  test('a number too large for a number', () => {
    const text = SAMPLE.replace(/"thickness": \d+/, '"thickness": 1e999');
    expect(text).not.toBe(SAMPLE);
    expect(problemsOf(text)).toEqual(['field-type job.practices.thickness']);
  });

  test('an outline of two corners', () => {
    const file = JSON.parse(SAMPLE);
    file.job.features = [file.job.features[8]];
    file.job.features[0].shape.corners.length = 2;
    expect(parseJob(JSON.stringify(file))).toMatchObject({
      problems: [{ code: 'too-few-corners', where: 'job.features[0].shape', facts: { least: 3 } }],
    });
  });

  test('all of them at once, with what was seen', () => {
    const file = JSON.parse(SAMPLE);
    file.job.name = 7;
    file.job.units = 'x'.repeat(100);
    delete file.job.site;
    const read = parseJob(JSON.stringify(file));
    expect(read).toMatchObject({
      problems: [
        { code: 'field-type', where: 'job.name', facts: { seen: '7', expected: 'text' } },
        { code: 'field-missing', where: 'job.site' },
        { code: 'field-choice', where: 'job.units' },
      ],
    });
    const seen = read.ok ? '' : String(read.problems[2]?.facts?.['seen']);
    expect(seen.length).toBeLessThan(70);
  });

  test('no more than anybody reads', () => {
    const file = JSON.parse(SAMPLE);
    file.job.features = Array.from({ length: 100 }, () => ({ kind: 'nothing' }));
    const problems = problemsOf(JSON.stringify(file));
    expect(problems).toHaveLength(41);
    expect(problems.at(-1)).toBe('file-more-problems');
  });
});

describe('nasty files', { timeout: 60_000 }, () => {
  const wrap = (job: string) => `{"format":"notchpad-job","version":1,"job":${job}}`;

  test('names that every object has from birth', () => {
    for (const name of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      const file = SAMPLE.replace('"nextId"', `"${name}": {"polluted": true}, "nextId"`);
      expect(problemsOf(file)).toEqual([`field-unknown job.${name}`]);
      const corner = SAMPLE.replace('"rise"', `"${name}": 1, "rise"`);
      expect(problemsOf(corner)).toEqual([
        `field-unknown job.features[0].shape.corners[0].${name}`,
      ]);
    }
    expect(problemsOf('{"__proto__":{"format":"notchpad-job","version":1,"job":{}}}')).toEqual([
      'file-not-ours',
    ]);
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });

  test('a format or job that is only inherited doesn’t count', () => {
    expect(problemsOf('{"format":"notchpad-job","version":1,"__proto__":{"job":{}}}')).toContain(
      'field-missing job',
    );
  });

  test('bottomless', () => {
    const deep = '['.repeat(200_000) + ']'.repeat(200_000);
    expect(problemsOf(wrap(deep))).toEqual(['field-type job']);
    const objects = `${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`;
    expect(problemsOf(wrap(objects)).length).toBeGreaterThan(0);
    expect(problemsOf(SAMPLE.replace('"Side yard landing"', deep))).toEqual([
      'field-type job.name',
    ]);
  });

  test('huge', () => {
    expect(problemsOf(' '.repeat(3) + '1'.repeat(5_000_001))).toEqual(['file-too-big']);
    const zeros = `{"name":"","site":"","notes":"","units":"metric","features":[${'0,'.repeat(2_400_000)}0]}`;
    expect(problemsOf(wrap(zeros)).length).toBeGreaterThan(0);
  });

  test('ten thousand random bites out of the sample file: refused or read, never thrown', () => {
    const draw = numbersFrom(77);
    const compact = JSON.stringify(JSON.parse(SAMPLE));
    let readable = 0;
    const unknown = new Set<string>();
    for (let run = 0; run < 10_000; run++) {
      const at = Math.floor(draw() * compact.length);
      const length = Math.floor(draw() * 12);
      const bit = ['', '0', '-', '"', '{', '}', '1e400', 'null', ',', '[]', '9'.repeat(30)];
      const put = bit[Math.floor(draw() * bit.length)] ?? '';
      const read = parseJob(compact.slice(0, at) + put + compact.slice(at + length));
      if (read.ok) readable += 1;
      else {
        for (const { code } of read.problems) {
          if (!(JOB_PROBLEMS as readonly string[]).includes(code)) unknown.add(code);
        }
      }
    }
    expect(readable).toBeGreaterThan(10);
    expect(readable).toBeLessThan(5000);
    expect([...unknown]).toEqual([]);
  });
});
