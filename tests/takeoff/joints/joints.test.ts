import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { panelsAt } from '../../../src/takeoff/joints/panelsAt.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { FLUID_OUNCE, FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, shape } from '../outline/site.ts';
import { BESIDE_OLDER, ELL, JOINT_TROUBLES, joint, jointed, LONG } from './jointJobs.ts';

const layoutOf = (job: Job) => takeoff(job).joints!.layout!;
const codes = (job: Job) => takeoff(job).notes.map(({ code }) => code);

describe('proposed', () => {
  test('a slab of 20 by 10 ft at 4 in: one joint across its middle, 10 ft, and both panels pass', () => {
    const { joints, panels, broken, most, depth } = layoutOf(LONG);
    // 30 × 4 in, a quarter of 4 in.
    expect([most, depth]).toEqual([10 * FOOT, INCH]);
    expect(joints).toEqual([expect.objectContaining({ kind: 'control', by: 'search' })]);
    expect(joints[0]!.from.x).toBe(10 * FOOT);
    expect(panels.map(({ length, width }) => [length / FOOT, width / FOOT])).toEqual([
      [10, 10],
      [10, 10],
    ]);
    expect(broken).toEqual([]);
  });

  test('at 24 thicknesses it takes more', () => {
    const { most, broken } = layoutOf(jointed(LONG, { factor: 24 }));
    expect(most).toBe(8 * FOOT);
    expect(broken).toEqual([]);
  });

  test('the cap holds however thick the slab is', () => {
    const thick = { ...LONG, practices: { ...LONG.practices, thickness: 8 * INCH } };
    expect(layoutOf(thick).most).toBe(15 * FOOT);
  });

  test('a joint comes to the inside corner of an L', () => {
    const { joints, broken } = layoutOf(ELL);
    const corner = { x: 8 * FOOT, y: 8 * FOOT };
    expect(
      joints.some(({ from, to }) =>
        [from, to].some((end) => end.x === corner.x && end.y === corner.y),
      ),
    ).toBe(true);
    expect(broken.map(({ rule }) => rule)).not.toContain('inside-corner');
  });

  test('the joint of the older slab is carried on', () => {
    const { joints, broken } = layoutOf(BESIDE_OLDER);
    const meets = joints.filter(({ from, to }) =>
      [from, to].some((end) => end.x === 20 * FOOT && end.y === 5 * FOOT),
    );
    expect(meets.length).toBe(1);
    expect(broken.map(({ rule }) => rule)).not.toContain('old-joint');
  });

  test('goes round what was drawn by hand', () => {
    const drawn = jobOf([
      ...LONG.features,
      joint('mine', [
        [7, 0],
        [7, 10],
      ]),
    ]);
    const { joints, panels } = layoutOf(drawn);
    const mine = joints.filter(({ by }) => by === 'hand');
    expect(mine.map(({ from, to }) => [from.x / FOOT, to.x / FOOT])).toEqual([[7, 7]]);
    expect(joints.length).toBeGreaterThan(1);
    expect(panels.every(({ length }) => length <= 10 * FOOT + 508)).toBe(true);
  });
});

describe('by hand', () => {
  const hand = (job: Job) => jointed(job, { layout: 'by-hand' });

  test('the report follows: nothing drawn, and the corner and the size are named', () => {
    const layout = layoutOf(hand(ELL));
    expect(layout.joints).toEqual([]);
    expect(layout.broken.map(({ rule }) => rule).toSorted()).toEqual(['inside-corner', 'too-long']);
    expect(layout.broken.map((one) => panelsAt(layout, one))).toEqual([[0], [0]]);
  });

  test('drawn past the edges it is cut off there', () => {
    const drawn = hand(
      jobOf([
        ...LONG.features,
        joint('mine', [
          [10, -3],
          [10, 14],
        ]),
      ]),
    );
    const [line] = layoutOf(drawn).joints;
    expect([line!.from, line!.to]).toEqual([
      { x: 10 * FOOT, y: 0 },
      { x: 10 * FOOT, y: 10 * FOOT },
    ]);
    expect(layoutOf(drawn).broken).toEqual([]);
  });

  test('moved to 7 ft, one panel is 13 ft long', () => {
    const drawn = hand(
      jobOf([
        ...LONG.features,
        joint('mine', [
          [7, 0],
          [7, 10],
        ]),
      ]),
    );
    const layout = layoutOf(drawn);
    expect(layout.broken).toMatchObject([{ rule: 'too-long', found: 13 * FOOT }]);
    const ticket = ticketOf(drawn, takeoff(drawn), 'joints');
    const panels = ticket.tables.find(({ key }) => key === 'panels')!;
    expect(panels.rows.map((row) => row[1])).toMatchObject([
      { of: 'words', word: 'panel-passes' },
      { of: 'list', items: [{ word: 'broken-too-long' }] },
    ]);
  });

  test('two that lie on one another are one', () => {
    const drawn = hand(
      jobOf([
        ...LONG.features,
        joint('one', [
          [10, 0],
          [10, 10],
        ]),
        joint('two', [
          [10, 0],
          [10, 6],
        ]),
      ]),
    );
    expect(layoutOf(drawn).joints).toHaveLength(1);
  });

  test('one that stops inside is named, and panels are as if it weren’t there', () => {
    const drawn = hand(
      jobOf([
        ...LONG.features,
        joint('one', [
          [10, 0],
          [10, 10],
        ]),
        joint('two', [
          [0, 5],
          [4, 5],
        ]),
      ]),
    );
    const layout = layoutOf(drawn);
    expect(layout.panels).toHaveLength(2);
    expect(layout.broken.map(({ rule }) => rule)).toContain('ends-inside');
  });

  test('outside of the pour it is told so, and so is an older joint that doesn’t come to it', () => {
    expect(codes(JOINT_TROUBLES['badlyDrawn']!)).toEqual(
      expect.arrayContaining(['joint-outside', 'joint-existing-apart', 'joint-broken-sharp']),
    );
  });

  test('a construction joint parts the slab, is counted apart, and is named B1', () => {
    const job = JOINT_TROUBLES['stops']!;
    const { figures, tables } = ticketOf(job, takeoff(job), 'joints');
    const value = (key: string) => figures.find((one) => one.key === key)?.value;
    expect(value('joint-stop-length')).toEqual({ of: 'length', grid: 10 * FOOT });
    expect(value('joint-length')).toEqual({ of: 'length', grid: 0 });
    expect(tables.find(({ key }) => key === 'joints')!.rows[0]![0]).toEqual({
      of: 'text',
      text: 'B1',
    });
  });
});

describe('strip and sealant', () => {
  test('a patch that is bonded has no strip in it', () => {
    // The seam is 10 ft, of which 2 ft are the mouth of the patch, whose other three sides come to 6 ft.
    const bonded = JOINT_TROUBLES['bonded']!;
    const apart = jointed(bonded, {}, { bondAtPatch: false });
    expect(takeoff(bonded).joints!.total).toBe(8 * FOOT);
    expect(takeoff(apart).joints!.total).toBe(14 * FOOT);
  });

  test('20 ft of groove 1/4 by 1/4 in and 10 ft of strip 1/2 by 1/4 in: 15 in³ each, in cartridges of 10 fl oz', () => {
    const { sealant } = LONG.practices.joints;
    const job = jointed(
      jobOf([
        ...jobOf([
          shape('pad', 'pad', [
            [0, 0],
            [30, 0],
            [30, 10],
            [0, 10],
          ]),
        ]).features,
        shape('existing-slab', 'older', [
          [30, 0],
          [40, 0],
          [40, 10],
          [30, 10],
        ]),
      ]),
      { sealant: { ...sealant, joints: true, strip: true, backer: true } },
      { recess: INCH / 4 },
    );
    const { sealed, stripDepth, layout } = takeoff(job).joints!;
    expect(layout!.joints).toHaveLength(2);
    expect(stripDepth).toBe(3.75 * INCH);
    expect(sealed!.parts.map(({ volume }) => volume / INCH ** 3)).toEqual([15, 15]);
    // 30 in³ are 16.6 fl oz.
    expect(sealed!.volume / FLUID_OUNCE).toBeCloseTo(16.62, 2);
    expect([sealed!.cartridges, sealed!.backer]).toEqual([2, 20 * FOOT]);
  });
});

describe('bad input', () => {
  test.each([
    ['tooMany', 'joints-too-many'],
    ['rules', 'joints-rules-wrong'],
    ['deep', 'joint-too-deep'],
  ])('%s: no layout, and %s says why', (name, code) => {
    const job = JOINT_TROUBLES[name]!;
    expect(takeoff(job).joints!.layout).toBeUndefined();
    expect(takeoff(job).notes.find((note) => note.code === code)?.weight).toBe('stop');
    // Strip doesn't depend on it.
    expect(takeoff(job).joints!.pieces).toBe(0);
  });

  test('strip kept as low as the slab is thick: none is counted, and why is said', () => {
    const job = JOINT_TROUBLES['stripTooLow']!;
    const { figures } = ticketOf(job, takeoff(job), 'joints');
    expect(takeoff(job).joints!.pieces).toBeUndefined();
    expect(figures.map(({ key }) => key)).not.toContain('strip-length');
    expect(takeoff(job).notes.find(({ code }) => code === 'strip-too-low')?.weight).toBe('stop');
  });

  test('a spacing of nothing: no layout', () => {
    for (const change of [{ factor: 0 }, { cap: 0 }, { ratio: 0.5 }, { angle: 120 }]) {
      const job = jointed(LONG, change);
      expect(takeoff(job).joints!.layout).toBeUndefined();
      expect(codes(job)).toContain('joints-rules-wrong');
    }
  });
});
