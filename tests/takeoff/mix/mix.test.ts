import { describe, expect, test } from 'vitest';
import type { Practices } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { CUBIC_FOOT, INCH, POUND_KG } from '../../../src/units/grid.ts';
import { wasteByShare } from '../../published/slabs.ts';
import { jobOf, shape } from '../outline/site.ts';

function poured(feetLong: number, feetWide: number, change: Partial<Practices> = {}) {
  const job = jobOf([
    shape('pad', 'pad', [
      [0, 0],
      [feetLong, 0],
      [feetLong, feetWide],
      [0, feetWide],
    ]),
  ]);
  return takeoff({ ...job, practices: { ...job.practices, ...change } });
}

const MIX = jobOf([]).practices.mix;

function blended(mainParts: number, otherParts: number): Partial<Practices> {
  return { mix: { ...MIX, blend: { main: 'regular', mainParts, other: 'fast', otherParts } } };
}

describe('lines', () => {
  test('add up exactly, at any size', () => {
    for (let size = 1; size < 60; size += 0.37) {
      for (const change of [{}, blended(3, 1), { thickness: 3.71 * INCH }]) {
        const rounded = { ...change };
        if (rounded.thickness) rounded.thickness = Math.round(rounded.thickness);
        const { net, allowance, needed, rounding, made } = poured(size, 7.3, rounded).mix!;
        expect(net + allowance).toBe(needed);
        expect(needed + rounding).toBe(made);
        expect(net + allowance + rounding).toBe(made);
        expect(rounding).toBeGreaterThanOrEqual(0);
      }
    }
  });

  test('the net is the volume to the nearest cubic millimetre, waste or not', () => {
    const { volume, mix } = poured(11.3, 7.9);
    expect(Math.abs(mix!.net - volume!.net)).toBeLessThanOrEqual(320 ** 3 / 2);
    expect(poured(11.3, 7.9, { waste: wasteByShare(0.5, 9) }).mix!.net).toBe(mix!.net);
  });

  test('the allowance is the larger of a share and a count of bags', () => {
    // 12 ft³: a tenth is 1.2 ft³, two bags of 0.6 are as much; below that the bags win.
    const cubic = (feet: number) => poured(feet, 3, { waste: wasteByShare(0.1, 2) }).mix!;
    expect(cubic(12)).toMatchObject({ allowanceBy: 'share' });
    expect(cubic(11.9)).toMatchObject({ allowanceBy: 'minimum-bags' });
    expect(cubic(11.9).allowance / CUBIC_FOOT).toBeCloseTo(1.2, 6);
    expect(cubic(24).allowance / CUBIC_FOOT).toBeCloseTo(2.4, 6);
    const none = poured(12, 3, { waste: wasteByShare(0) }).mix!;
    expect(none).toMatchObject({ allowanceBy: 'none', allowance: 0 });
  });
});

describe('bags', () => {
  test('of one mix', () => {
    const mix = poured(12, 10, { thickness: 3.5 * INCH, waste: wasteByShare(0) }).mix!;
    expect(mix.bags).toEqual([{ mix: 'regular', parts: 1, bags: 59 }]);
    expect(mix.weight / POUND_KG).toBeCloseTo(4720, 6);
    expect(mix.batching).toMatchObject({ batches: 30 });
  });

  test('of two mixes, by parts', () => {
    const mix = poured(12, 10, { ...blended(3, 1), waste: wasteByShare(0) }).mix!;
    // 40 ft³: 73 bags (55 + 18) make 39.75; 74 (56 + 18) make 40.35.
    expect(mix.bags.map(({ bags }) => bags)).toEqual([56, 18]);
    expect(mix.made / CUBIC_FOOT).toBeCloseTo(40.35, 6);
    expect(mix.totalBags).toBe(74);
  });

  test('of a mix that has no parts: none', () => {
    expect(poured(12, 10, blended(1, 0)).mix!.bags).toHaveLength(1);
    expect(poured(12, 10, blended(0, 1)).mix!.bags).toMatchObject([{ mix: 'fast' }]);
  });

  test('of the same mix twice: one', () => {
    const blend = { main: 'fast', mainParts: 2, other: 'fast', otherParts: 1 };
    expect(poured(12, 10, { mix: { ...MIX, blend } }).mix!.bags).toMatchObject([
      { mix: 'fast', parts: 3 },
    ]);
  });
});

describe('withheld, with the reason', () => {
  const bad = (change: object) => MIX.mixes.map((one) => ({ ...one, ...change }));
  test.each([
    [blended(0, 0), 'blend-no-parts'],
    [blended(-1, 2), 'blend-no-parts'],
    [blended(0.3, 2), 'blend-no-parts'],
    [{ mix: { ...MIX, blend: { ...MIX.blend, main: 'gone' } } }, 'mix-not-listed'],
    [{ mix: { ...MIX, mixes: bad({ yield: 0 }) } }, 'bag-yield-zero'],
    [{ mix: { ...MIX, mixes: bad({ yield: Number.NaN }) } }, 'bag-yield-zero'],
    [{ mix: { ...MIX, mixes: bad({ weight: 0 }) } }, 'bag-weight-zero'],
    [{ mix: { ...MIX, mixes: bad({ yield: 1e9 }) } }, 'bags-too-many'],
    [{ waste: wasteByShare(-0.1) }, 'waste-below-zero'],
    [{ waste: wasteByShare(Number.NaN) }, 'waste-below-zero'],
    [{ waste: { ...wasteByShare(0), spillage: -0.01 } }, 'waste-below-zero'],
    [
      { waste: { ...wasteByShare(0), extras: [{ id: 'x', name: '', volume: -1 }] } },
      'waste-below-zero',
    ],
  ] as const)('%o', (change, code) => {
    const { mix, volume, notes } = poured(12, 10, change as Partial<Practices>);
    expect(mix).toBeUndefined();
    expect(volume).toBeDefined();
    expect(notes.find((note) => note.code === code)?.weight).toBe('stop');
  });

  test('a mixer of no size: bags, but no batches', () => {
    const { mix, notes } = poured(12, 10, { mix: { ...MIX, batchVolume: 0 } });
    expect(mix!.batching).toBeUndefined();
    expect(notes.find(({ code }) => code === 'batch-too-small')?.weight).toBe('stop');
  });
});
