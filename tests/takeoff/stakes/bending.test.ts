import { describe, expect, test } from 'vitest';
import { defaultPractices } from '../../../src/job/defaults.ts';
import type { BoardSize, Practices } from '../../../src/job/job.ts';
import {
  bowUnderKnock,
  bowUnderThrust,
  pushOf,
  sectionOf,
  spacingLimits,
} from '../../../src/takeoff/stakes/bending.ts';
import { FOOT, INCH, METRE, POUND_KG } from '../../../src/units/grid.ts';
import { reference } from '../../references/references.ts';
import { spacings } from '../spacings.ts';

const INCH_METRES = 0.0254;
const LB_FT = (POUND_KG * 9.80665) / 0.3048;

function limitsOf(formBoard: BoardSize, practices: Partial<Practices> = {}) {
  return spacingLimits({
    ...defaultPractices(),
    formBoard,
    ...spacings(100 * FOOT),
    ...practices,
  })!;
}

describe('a form board', () => {
  // t is 1 1/2 in (3/4 in for 1x), d what it is deep on edge: I = d·t³ ÷ 12, S = d·t² ÷ 6, worked by hand.
  test.each([
    ['1x4', 0.123, 0.328],
    ['1x6', 0.193, 0.516],
    ['2x4', 0.984, 1.313],
    ['2x6', 1.547, 2.0625],
    ['2x8', 2.039, 2.719],
    ['2x10', 2.602, 3.469],
    ['2x12', 3.164, 4.219],
  ] as const)('%s bends flat: I %f in⁴, S %f in³', (size, inertia, modulus) => {
    const section = sectionOf(size);
    expect(section.inertia / INCH_METRES ** 4).toBeCloseTo(inertia, 3);
    expect(section.modulus / INCH_METRES ** 3).toBeCloseTo(modulus, 3);
  });

  test.each([
    ['2x4', 43.8, 6.38],
    ['2x6', 68.8, 15.76],
    ['2x8', 90.6, 27.38],
    ['2x10', 115.6, 44.56],
    ['2x12', 140.6, 65.92],
  ] as const)('%s is pressed with %f lb/ft² at its bottom, %f lb/ft in all', (size, psf, plf) => {
    reference('form-board-statics');
    const { pressure, thrust } = pushOf(size, defaultPractices().bending.freshWeight);
    expect(pressure / (LB_FT / 0.3048)).toBeCloseTo(psf, 0);
    expect(thrust / LB_FT).toBeCloseTo(plf, 1);
  });

  // Inches, to the nearest: bow of 1/360 of the spacing, bow of 1/16 in, bending at 900 psi; E 1,200,000 psi.
  test.each([
    ['2x4', 96, 67, 149],
    ['2x12', 65, 50, 83],
  ] as const)(
    '%s goes %i in by 1/360, %i in by 1/16 in, %i in by its stress',
    (size, ...inches) => {
      reference('form-board-statics');
      const { share, deflection, bending } = limitsOf(size);
      expect([share, deflection, bending].map((limit) => Math.round(limit / INCH))).toEqual(inches);
    },
  );

  test('comes to the formulas in inches and pounds to the foot', () => {
    const { bending } = defaultPractices();
    for (const size of ['1x4', '2x6', '2x10'] as const) {
      const i = sectionOf(size).inertia / INCH_METRES ** 4;
      const s = sectionOf(size).modulus / INCH_METRES ** 3;
      const w = pushOf(size, bending.freshWeight).thrust / LB_FT;
      const limits = limitsOf(size);
      expect(limits.bending / INCH).toBeCloseTo(10.95 * Math.sqrt((900 * s) / w), 0);
      expect(limits.share / INCH).toBeCloseTo(1.69 * Math.cbrt((1.2e6 * i) / w), 0);
      expect(limits.deflection / INCH).toBeCloseTo(3.23 * ((1.2e6 * i) / w) ** 0.25, 0);
    }
  });

  test('on its strong axis it would be several times as stiff: that isn’t how it stands', () => {
    // A 2x12 bent the other way, t·d³ ÷ 12, is 56 times as stiff: its spacing by 1/360 would be 20 ft.
    const strong = (1.5 * 11.25 ** 3) / 12;
    expect(strong / (sectionOf('2x12').inertia / INCH_METRES ** 4)).toBeCloseTo(56.25, 2);
    expect(limitsOf('2x12').share / INCH).toBeLessThan(100);
  });
});

describe('the spacing', () => {
  test('is the practice’s wherever the board bears more: for every size, as things are set', () => {
    for (const size of Object.keys(defaultPractices().stakeSpacings) as BoardSize[]) {
      const limits = spacingLimits({ ...defaultPractices(), formBoard: size })!;
      expect(limits.governs, size).toBe('practice');
      expect(limits.spacing).toBe(defaultPractices().stakeSpacings[size]);
    }
  });

  test.each([
    ['deflection', {}],
    ['deflection-share', { deflection: METRE, deflectionShare: 1 / 2000 }],
    ['bending', { deflection: METRE, deflectionShare: 1, stress: 1e6 }],
  ] as const)('is capped by %s', (governs, change) => {
    const limits = limitsOf('2x8', { bending: { ...defaultPractices().bending, ...change } });
    expect(limits.governs).toBe(governs);
    expect(limits.spacing).toBe(Math.min(limits.deflection, limits.share, limits.bending));
  });

  test.each([
    { deflection: 0 },
    { deflectionShare: 0 },
    { elasticity: Number.NaN },
    { stress: -1 },
    { freshWeight: 0 },
    { freshWeight: Number.POSITIVE_INFINITY },
  ])('can’t be told with %o', (change) => {
    const bending = { ...defaultPractices().bending, ...change };
    expect(spacingLimits({ ...defaultPractices(), bending })).toBeUndefined();
  });
});

// Computed beforehand from 5·w·l⁴ ÷ (384·E·I) and P·l³ ÷ (48·E·I) with E 1,200,000 psi, one span: practice of slabs.
test('bow of a 2x4: the concrete does little, a knock of 150 lb much', () => {
  const { bending } = defaultPractices();
  expect(bowUnderThrust('2x4', 48 * INCH, bending) / INCH).toBeCloseTo(0.03, 2);
  expect(bowUnderKnock('2x4', 48 * INCH, bending) / INCH).toBeCloseTo(0.29, 2);
  expect(bowUnderKnock('2x4', 36 * INCH, bending) / INCH).toBeCloseTo(0.12, 2);
  expect(bowUnderKnock('2x4', 32 * INCH, bending) / INCH).toBeCloseTo(0.09, 2);
});
