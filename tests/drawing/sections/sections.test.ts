import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../../src/drawing/bounds.ts';
import type { Cut, SectionKind } from '../../../src/drawing/sections/cut.ts';
import { cutOf, leastShown } from '../../../src/drawing/sections/cutOf.ts';
import { placeCut } from '../../../src/drawing/sections/placeCut.ts';
import { sectionKinds } from '../../../src/drawing/sections/sectionKinds.ts';
import { en } from '../../../src/drawing/words/en.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job, Practices } from '../../../src/job/job.ts';
import { blankJob } from '../../../src/job/start.ts';
import { wrapped } from '../../../src/sheet/lettering.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { INCH, MILLIMETRE } from '../../../src/units/grid.ts';
import { overlaps } from '../overlaps.ts';
import { jointedJob, sectionJobs } from './sectionJobs.ts';

function cut(job: Job, kind: SectionKind): Cut {
  const figured = takeoff(job);
  return cutOf(kind, job, figured, en, leastShown(kind, job, figured));
}

function withPractices(change: Partial<Practices>): Job {
  const job = demoJob();
  return { ...job, practices: { ...job.practices, ...change } };
}

const thickenedEdge = { use: true, depth: 12 * INCH, width: 10 * INCH, taper: 6 * INCH };

function said({ flags }: Cut): string {
  return flags.map(({ text }) => text).join('\n');
}

/** Sizes as they will be written, inches: across for those below, up and down for the others. */
function sizes({ sizes: all }: Cut, side: 'left' | 'right' | 'below'): readonly number[] {
  return all
    .filter((size) => size.side === side)
    .map(({ from, to }) => Math.abs(side === 'below' ? to.x - from.x : to.y - from.y) / INCH);
}

/** The lowest place of a material, inches. */
function lowestOf({ areas }: Cut, material: string): number {
  const ys = areas
    .filter((one) => one.material === material)
    .flatMap(({ path }) => [path.start, ...path.segments.map(({ to }) => to)].map(({ y }) => y));
  return Math.min(...ys) / INCH;
}

describe('the sections of a job', () => {
  test('one for every kind of edge that it has', () => {
    const job = demoJob();
    expect(sectionKinds(takeoff(job))).toEqual([
      'free',
      'existing-slab',
      'wall',
      'wall-formed',
      'steps',
      'block-out',
      'control-joint',
    ]);
  });

  test('a thickened edge takes the place of the plain one; without joints none is cut through', () => {
    const { joints } = demoJob().practices;
    const job = withPractices({ thickenedEdge, joints: { ...joints, layout: 'by-hand' } });
    const kinds = sectionKinds(takeoff(job));
    expect(kinds[0]).toBe('thickened');
    expect(kinds).not.toContain('free');
    expect(kinds).not.toContain('control-joint');
  });

  test('none where nothing can be poured', () => {
    expect(sectionKinds(takeoff(blankJob()))).toEqual([]);
    const thin = withPractices({ thickness: 0 });
    expect(sectionKinds(takeoff(thin))).toEqual([]);
  });
});

describe('a free edge', () => {
  test('the slab, its form, the gap under it and the steel at its height', () => {
    const free = cut(demoJob(), 'free');
    expect(lowestOf(free, 'cut-concrete')).toBe(-4);
    // A 2x4 on edge, its top at the finish.
    expect(lowestOf(free, 'cut-lumber')).toBe(-3.5);
    expect(sizes(free, 'right')).toEqual([4, 2]);
    expect(said(free)).toContain('Gap 1/2"');
    expect(said(free)).toContain('Form board 2×4, 3 1/2" deep');
    expect(free.dots.every(({ y }) => y < -1 * INCH && y > -2 * INCH)).toBe(true);
  });

  test('what the job doesn’t have isn’t drawn', () => {
    const bare = cut(
      withPractices({
        gapUnderForm: 0,
        edgeRadius: 0,
        steel: { ...demoJob().practices.steel, kind: 'none' },
      }),
      'free',
    );
    expect(bare.dots).toEqual([]);
    for (const word of ['Gap', 'Mesh', 'rounded', 'Base', 'retarder'])
      expect(said(bare)).not.toContain(word);
  });

  test('base and vapour retarder when they are in the practices', () => {
    const based = cut(withPractices({ base: { depth: 4 * INCH, retarder: true } }), 'free');
    expect(lowestOf(based, 'stone')).toBe(-8);
    expect(sizes(based, 'right')).toContain(4);
    expect(said(based)).toContain('Base, compacted');
    expect(said(based)).toContain('Vapour retarder');
  });

  test('thickened: as deep and wide as the practices say, the form no deeper', () => {
    const deep = cut(withPractices({ thickenedEdge }), 'thickened');
    expect(lowestOf(deep, 'cut-concrete')).toBe(-12);
    expect(lowestOf(deep, 'cut-lumber')).toBe(-3.5);
    expect(sizes(deep, 'left')).toEqual([12]);
    expect(sizes(deep, 'below')).toEqual([10, 6]);
  });
});

describe('against what is there', () => {
  test('a strip as thick as it is, its top as low', () => {
    const { isolation } = demoJob().practices;
    const job = withPractices({ isolation: { ...isolation, thickness: INCH, recess: INCH / 2 } });
    const old = cut(job, 'existing-slab');
    const filler = old.areas.find(({ material }) => material === 'filler')!;
    const xs = [filler.path.start, ...filler.path.segments.map(({ to }) => to)].map(({ x }) => x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, INCH]);
    expect(sizes(old, 'left')).toEqual([0.5]);
    expect(said(old)).toContain('Isolation strip, 1"');
  });

  test('without a strip it is bonded; dowels when they are used', () => {
    const { isolation, steel } = demoJob().practices;
    const job = withPractices({
      isolation: { ...isolation, existing: false },
      steel: { ...steel, dowels: { ...steel.dowels, use: true } },
    });
    const old = cut(job, 'existing-slab');
    expect(said(old)).toContain('No strip');
    expect(said(old)).toContain('Dowel Ø 1/2"');
    expect(old.areas.some(({ material }) => material === 'filler')).toBe(false);
    expect(old.areas.some(({ material }) => material === 'steel')).toBe(true);
  });
});

describe('a control joint', () => {
  test('a quarter of the thickness, and no less than the least', () => {
    expect(sizes(cut(jointedJob({}), 'control-joint'), 'left')).toEqual([1]);
    expect(sizes(cut(jointedJob({ thickness: 6 * INCH }), 'control-joint'), 'left')).toEqual([1.5]);
    expect(sizes(cut(jointedJob({ thickness: 3 * INCH }), 'control-joint'), 'left')).toEqual([1]);
  });

  test('tooled or sawn, sealed over a backer when that is set', () => {
    const { joints } = demoJob().practices;
    const sealant = { ...joints.sealant, joints: true, backer: true };
    expect(said(cut(jointedJob({}), 'control-joint'))).toContain('Tooled groove');
    const sawn = cut(jointedJob({ joints: { ...joints, made: 'sawn', sealant } }), 'control-joint');
    for (const word of ['Saw cut', 'Sealant', 'Backer rod']) expect(said(sawn)).toContain(word);
  });
});

test.each(Object.entries(sectionJobs()))(
  '%s: at every scale nothing is written on anything else, and every size has its place',
  (_, job) => {
    const figured = takeoff(job);
    for (const kind of sectionKinds(figured)) {
      for (const ratio of [4, 5, 8, 10, 12]) {
        const gridPerMm = ratio * MILLIMETRE;
        const { left, right } = leastShown(kind, job, figured);
        const drawn = cutOf(kind, job, figured, en, {
          left,
          right: Math.max(right, 55 * gridPerMm),
        });
        const placed = placeCut(drawn, {
          gridPerMm,
          units: job.units,
          words: en,
          rightMm: Math.max(right / gridPerMm, 55) + 15,
          lines: wrapped,
        });
        expect(overlaps(placed.marks, gridPerMm), `${kind} at 1:${ratio}`).toEqual([]);
        expect(placed.unplaced, `${kind} at 1:${ratio}`).toEqual([]);
        expect(placed.bounds).toEqual(boundsOf(placed.marks, { gridPerMm }));
      }
    }
  },
);
