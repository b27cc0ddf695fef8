import { describe, expect, test } from 'vitest';
import { textCorners } from '../../src/drawing/bounds.ts';
import type { Mark } from '../../src/drawing/marks.ts';
import { pathPoints } from '../../src/drawing/paths.ts';
import { planOf } from '../../src/drawing/plan.ts';
import { en } from '../../src/drawing/words/en.ts';
import type { Point } from '../../src/geometry/point.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { MILLIMETRE } from '../../src/units/grid.ts';
import { formatLength } from '../../src/units/length.ts';
import { randomPadJob } from './randomPads.ts';

type Text = Extract<Mark, { kind: 'text' }>;
type Spot = { readonly x: number; readonly y: number };

/** An independent look at the marks: convex polygons by their separating sides, nothing of the code that placed them. */
function polygonsMeet(a: readonly Spot[], b: readonly Spot[]): boolean {
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    for (let i = 0; i < one.length; i++) {
      const p = one[i]!;
      const q = one[(i + 1) % one.length]!;
      const normal = { x: q.y - p.y, y: p.x - q.x };
      const size = Math.hypot(normal.x, normal.y);
      if (size === 0) continue;
      const reach = (spots: readonly Spot[]) =>
        spots.map((s) => (s.x * normal.x + s.y * normal.y) / size);
      const [own, their] = [reach(one), reach(other)];
      if (Math.max(...own) <= Math.min(...their) + 1e-6) return false;
      if (Math.max(...their) <= Math.min(...own) + 1e-6) return false;
    }
  }
  return true;
}

const LINES = new Set([
  'dimension',
  'extension',
  'centre',
  'outline-free',
  'outline-existing',
  'outline-wall',
  'outline-steps',
  'outline-block-out',
  'outline-wall-formed',
]);

/** Everything that lies on something else, in words. */
function overlaps(marks: readonly Mark[], gridPerMm: number): readonly string[] {
  const texts = marks.filter((mark): mark is Text => mark.kind === 'text');
  const rooms = texts.map((text) => textCorners(text, gridPerMm));
  const found: string[] = [];
  texts.forEach((text, i) => {
    for (let j = i + 1; j < texts.length; j++) {
      if (polygonsMeet(rooms[i]!, rooms[j]!)) found.push(`“${text.text}” on “${texts[j]!.text}”`);
    }
    for (const mark of marks) {
      if (mark.kind === 'symbol' && mark.symbol !== 'arrow') {
        // A tick is a stroke at 45°: half its size to each side along the line, as far up and down.
        const half = (mark.size / 2) * Math.SQRT1_2 * gridPerMm;
        const [cos, sin] = [Math.cos(mark.angle), Math.sin(mark.angle)];
        const box = [
          [-half, -half],
          [half, -half],
          [half, half],
          [-half, half],
        ].map(([x, y]) => ({
          x: mark.at.x + x! * cos - y! * sin,
          y: mark.at.y + x! * sin + y! * cos,
        }));
        if (polygonsMeet(rooms[i]!, box)) found.push(`“${text.text}” on a ${mark.symbol}`);
      }
      if (mark.kind === 'line' && LINES.has(mark.style)) {
        if (isRing(mark.path.segments.length, mark.path.closed, mark.style)) continue;
        const points = pathPoints(mark.path, 8);
        for (let k = 1; k < points.length; k++) {
          if (polygonsMeet(rooms[i]!, [points[k - 1]!, points[k]!])) {
            found.push(`“${text.text}” on a line (${mark.style})`);
            break;
          }
        }
      }
    }
  });
  return found;
}

/** The ring round a letter is meant to have the letter in it. */
function isRing(segments: number, closed: boolean, style: string): boolean {
  return segments === 2 && closed && style === 'dimension';
}

function planAt(job: Job, ratio: number) {
  const figured = takeoff(job);
  const gridPerMm = ratio * MILLIMETRE;
  const plan = planOf(job, figured, {
    station: 'sheet',
    scale: { gridPerMm },
    words: en,
    dimensions: true,
  });
  return { plan, figured, gridPerMm };
}

function edgeTexts(job: Job, { figured }: ReturnType<typeof planAt>): readonly string[] {
  return (figured.pour?.pieces ?? []).flatMap(({ rings }) =>
    rings[0]!.edges.flatMap(({ length, arc, from, to }) =>
      arc
        ? [en.chord(formatLength(Math.hypot(to.x - from.x, to.y - from.y), job.units))]
        : [formatLength(length, job.units)],
    ),
  );
}

/** What the texts and the list say, each as often as it is said. */
function missing(wanted: readonly string[], said: readonly string[]): readonly string[] {
  const left = [...said];
  return wanted.filter((text) => {
    const at = left.indexOf(text);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

describe('dimensions', () => {
  // Twelve hundred pads, at the scale of 1/4 in to the foot, in runs so that a fault names its own.
  test.each(Array.from({ length: 12 }, (_, i) => i * 100))(
    'nothing lies on anything else, and every edge is said: pads %i and on',
    (first) => {
      for (let seed = first; seed < first + 100; seed++) {
        const job = randomPadJob(seed);
        const drawn = planAt(job, 48);
        const { plan, gridPerMm } = drawn;
        expect(drawn.figured.pour, `pad ${seed}`).toBeDefined();
        expect(overlaps(plan.marks, gridPerMm), `pad ${seed}`).toEqual([]);
        const said = [
          ...plan.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
          ...plan.keyed.map(({ text }) => text),
        ];
        expect(missing(edgeTexts(job, drawn), said), `pad ${seed}`).toEqual([]);
      }
    },
    60_000,
  );

  test('the sample job, at every scale from large to small', () => {
    for (const ratio of [12, 16, 24, 32, 48, 64, 96, 120]) {
      const drawn = planAt(demoJob(), ratio);
      expect(overlaps(drawn.plan.marks, drawn.gridPerMm), `1:${ratio}`).toEqual([]);
    }
  });

  test('this check can fail: two texts on one place are found', () => {
    const { plan, gridPerMm } = planAt(demoJob(), 48);
    const text = plan.marks.find((mark) => mark.kind === 'text')!;
    expect(overlaps([...plan.marks, text], gridPerMm).length).toBeGreaterThan(0);
  });

  test('letters in the list are each on the plan once', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { plan } = planAt(randomPadJob(seed), 96);
      for (const { key, marked } of plan.keyed) {
        const letters = plan.marks.filter((mark) => mark.kind === 'text' && mark.text === key);
        expect(letters.length, `${key} of pad ${seed}`).toBe(marked ? 1 : 0);
      }
    }
  });

  test('on a screen nothing is kept in a list that is not shown', () => {
    const job = demoJob();
    const plan = planOf(job, takeoff(job), {
      station: 'ground',
      scale: { gridPerMm: 9000 },
      words: en,
      dimensions: true,
    });
    expect(plan.keyed).toEqual([]);
  });

  test('what a dimension measures is that edge, corner to corner', () => {
    const job = randomPadJob(3);
    const plan = planOf(job, takeoff(job), {
      station: 'ground',
      scale: { gridPerMm: 6000 },
      words: en,
      dimensions: true,
      selected: 'p',
    });
    const measured = plan.marks.filter(
      (mark): mark is Text => mark.kind === 'text' && mark.measures !== undefined,
    );
    expect(measured.length).toBeGreaterThan(3);
    const pad = job.features[0]!;
    const corners = pad.shape.form === 'outline' ? pad.shape.corners : [];
    for (const { text, measures } of measured) {
      expect(measures!.feature).toBe('p');
      const at = corners.findIndex(({ id }) => id === measures!.corner);
      const from: Point = corners[at]!;
      const to: Point = corners[(at + 1) % corners.length]!;
      const length = formatLength(Math.hypot(to.x - from.x, to.y - from.y), job.units);
      expect([length, en.chord(length)]).toContain(text);
    }
  });
});
