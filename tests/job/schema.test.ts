import type { GenericSchema, InferOutput } from 'valibot';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { defaultPractices } from '../../src/job/defaults.ts';
import type { Feature, Job, Practices } from '../../src/job/job.ts';
import {
  type featureSchema,
  jobSchema,
  type jobSchemaParts,
  type practicesSchema,
  VERSION,
} from '../../src/job/schema.ts';
import { CUBIC_FOOT, CUBIC_YARD, INCH, SQUARE_FOOT, SQUARE_METRE } from '../../src/units/grid.ts';

/** What a schema reads, as the data that never changes that the rooms hand on. */
type Read<T extends GenericSchema> = Fixed<InferOutput<T>>;
type Fixed<T> = T extends object ? { readonly [K in keyof T]: Fixed<T[K]> } : T;

// Held by the type check: what the file may say and what the rooms take are one and the same.
test('the validator and the types say the same', () => {
  expectTypeOf<Read<typeof jobSchemaParts>>().toEqualTypeOf<Fixed<Job>>();
  expectTypeOf<Read<typeof featureSchema>>().toEqualTypeOf<Fixed<Feature>>();
  expectTypeOf<Read<typeof practicesSchema>>().toEqualTypeOf<Fixed<Practices>>();
});

describe('the JSON Schema', () => {
  const schema = JSON.stringify(jobSchema());
  test('names the format, and shuts out what it doesn’t know', () => {
    expect(jobSchema()).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      type: 'object',
      required: ['format', 'version', 'job'],
      additionalProperties: false,
      properties: { format: { const: 'notchpad-job' }, version: { const: VERSION } },
    });
  });
  test('knows every kind and every practice', () => {
    for (const word of ['no-stake-zone', 'pourAgainst', 'gapUnderForm', 'minimumBags', 'nextId']) {
      expect(schema).toContain(word);
    }
  });
  test('asks for whole numbers where the grid is', () => {
    expect(schema).toContain('"type":"integer"');
  });
});

describe('the practices that a job starts with', () => {
  const { thickness, gapUnderForm, steel, mix } = defaultPractices();
  const { mesh } = steel;
  test('agree with each other: a 2x4 (3 1/2 in) and its gap form the thickness', () => {
    expect(3.5 * INCH + gapUnderForm).toBe(thickness);
  });
  test('lap one square and 2 in', () => {
    expect([mesh.lapEnds, mesh.lapSides]).toEqual(Array(2).fill(mesh.own.square + 2 * INCH));
  });
  test('mesh weighs 21 lb on 100 ft²', () => {
    const kg = mesh.own.weight * ((100 * SQUARE_FOOT) / SQUARE_METRE);
    expect(kg / 0.45359237).toBeCloseTo(21, 12);
  });
  test('45 bags of 80 lb make a cubic yard, 72 of 50 lb; two of 80 lb make a batch', () => {
    const [regular, fast] = mix.mixes;
    expect((45 * (regular?.yield ?? 0)) / CUBIC_YARD).toBeCloseTo(1, 12);
    expect((72 * (fast?.yield ?? 0)) / CUBIC_YARD).toBeCloseTo(1, 12);
    expect((2 * (regular?.yield ?? 0)) / mix.batchVolume).toBeCloseTo(1, 12);
    expect(mix.batchVolume).toBeCloseTo(1.2 * CUBIC_FOOT);
  });
});
