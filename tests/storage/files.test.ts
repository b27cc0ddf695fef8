import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { fileNameOf, jobFromText, jobToText } from '../../src/storage/files.ts';

test('a job goes out and comes in the same', () => {
  expect(jobFromText(jobToText(demoJob()))).toEqual({ ok: true, value: demoJob() });
});

describe('file names', () => {
  test.each([
    ['Side yard landing', 'Side-yard-landing.json'],
    ['  Patio / steps: 2nd try?  ', 'Patio-steps-2nd-try.json'],
    ['Losa de la Señora Núñez', 'Losa-de-la-Señora-Núñez.json'],
    ['../../etc/passwd', 'etc-passwd.json'],
    ['', 'job.json'],
    ['***', 'job.json'],
    ['CON', 'job-CON.json'],
    ['com1', 'job-com1.json'],
    ['a'.repeat(500), `${'a'.repeat(60)}.json`],
    [`${'x'.repeat(59)} y`, `${'x'.repeat(59)}.json`],
    // A letter beyond the first 65,536 isn't cut in half.
    [`${'x'.repeat(59)}𠮷𠮷`, `${'x'.repeat(59)}𠮷.json`],
  ])('%s', (name, file) => {
    expect(fileNameOf({ name }, 'json')).toBe(file);
  });
});
