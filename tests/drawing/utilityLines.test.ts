import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/marks.ts';
import { planOf } from '../../src/drawing/plan.ts';
import { toleranceBand, UTILITY_STYLES } from '../../src/drawing/utilityLines.ts';
import { en } from '../../src/drawing/words/en.ts';
import type { Corner, Job, Service, UtilityLine } from '../../src/job/job.ts';
import { SERVICES } from '../../src/job/services.ts';
import { rectangleJob } from '../../src/job/start.ts';
import { STROKES as ON_PAPER } from '../../src/sheet/paint/strokes.ts';
import { STROKES as ON_SCREEN } from '../../src/sketch/paint/lineStyles.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { pathArea } from './measure.ts';

function lineOf(service: Service, ...feet: readonly (readonly [number, number])[]): UtilityLine {
  const corners = feet.map(
    ([x, y], i): Corner => ({ id: `${service}${i}`, x: x * FOOT, y: y * FOOT, rise: 0 }),
  );
  return {
    id: service,
    name: '',
    kind: 'utility-line',
    service,
    shape: { form: 'outline', closed: false, corners },
  };
}

/** A pad 12 × 10 ft with lines beside and under it. */
function jobWith(...lines: readonly UtilityLine[]): Job {
  const made = rectangleJob(12 * FOOT, 10 * FOOT);
  if (!made.ok) throw new Error('A plain rectangle was refused.');
  return { ...made.value, features: [...made.value.features, ...lines] };
}

function drawn(job: Job, station: 'forms' | 'sheet' = 'sheet'): readonly Mark[] {
  return planOf(job, takeoff(job), {
    station,
    scale: { gridPerMm: 15_000 },
    words: en,
    dimensions: true,
  }).marks;
}

const texts = (marks: readonly Mark[], feature: string) =>
  marks.flatMap((mark) => (mark.kind === 'text' && mark.feature === feature ? [mark] : []));

describe('a buried line on the plan', () => {
  test.each(SERVICES)('%s: its own line, the word in it, its name beside it', (service) => {
    const job = jobWith({ ...lineOf(service, [3, -6], [3, 16]), name: 'To the house' });
    for (const station of ['forms', 'sheet'] as const) {
      const marks = drawn(job, station);
      const lines = marks.filter((mark) => mark.kind === 'line' && mark.feature === service);
      expect(lines).toMatchObject([{ style: UTILITY_STYLES[service] }]);
      const said = texts(marks, service).map(({ text }) => text);
      expect(said).toContain(en.services[service].short);
      expect(said.some((text) => text.startsWith(en.services[service].name))).toBe(true);
    }
  });

  test('the word stands astride the line, on paper of its own', () => {
    const marks = drawn(jobWith(lineOf('gas', [-8, 3], [-2, 3])));
    const [word] = texts(marks, 'gas').filter(({ text }) => text === 'GAS');
    const middle = (word?.at.y ?? 0) + ((word?.height ?? 0) / 2) * 15_000;
    expect(middle / FOOT).toBeCloseTo(3, 6);
    expect(word?.halo).toBe(true);
  });

  test('a line hardly longer than its word has none in it', () => {
    const marks = drawn(jobWith(lineOf('gas', [-8, 3], [-7, 3])));
    expect(texts(marks, 'gas').filter(({ text }) => text === 'GAS')).toEqual([]);
  });
});

describe('the ground on either side of it', () => {
  test('reaches as far as the tolerance, round its ends as well', () => {
    const line = lineOf('water', [0, 0], [10, 0]);
    const [band, ...more] = toleranceBand(line, 2 * FOOT);
    if (band?.kind !== 'area') throw new Error('no band');
    expect(more).toEqual([]);
    // A rectangle 10 × 4 ft and two half discs of 2 ft.
    expect(pathArea(band.paths[0]!) / FOOT ** 2).toBeCloseTo(40 + 4 * Math.PI, 6);
  });

  test('lies under everything, and is not drawn where the tolerance is none', () => {
    const job = jobWith(lineOf('water', [3, -6], [3, 16]));
    expect(drawn(job)[0]).toMatchObject({ kind: 'area', material: 'tolerance', feature: 'water' });
    const none = { ...job, practices: { ...job.practices, utilityTolerance: 0 } };
    const isBand = (mark: Mark) => mark.kind === 'area' && mark.material === 'tolerance';
    expect(drawn(none).some(isBand)).toBe(false);
  });

  test('a bend is one band a stretch', () => {
    const bent = lineOf('water', [0, 0], [10, 0], [10, 5]);
    expect(toleranceBand(bent, 24 * INCH)).toHaveLength(2);
    expect(toleranceBand(lineOf('water'), 24 * INCH)).toEqual([]);
  });
});

test('the pour is the same with buried lines across it', () => {
  const bare = takeoff(jobWith());
  const crossed = takeoff(jobWith(...SERVICES.map((one, i) => lineOf(one, [i, -5], [12 - i, 15]))));
  expect(crossed.pour?.area).toBe(bare.pour?.area);
  expect(crossed.pour?.lengthByKind).toEqual(bare.pour?.lengthByKind);
});

test('no two buried lines, and no line of an edge, have the same dashes', () => {
  for (const strokes of [ON_PAPER, ON_SCREEN]) {
    const dashes = SERVICES.map((one) => strokes[UTILITY_STYLES[one]].dash.join(' '));
    const edges = Object.entries(strokes)
      .filter(([style]) => style.startsWith('outline'))
      .map(([, { dash }]) => dash.join(' '));
    expect(new Set(dashes).size).toBe(SERVICES.length);
    expect(dashes.filter((dash) => edges.includes(dash))).toEqual([]);
  }
});
