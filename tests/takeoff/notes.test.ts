import { expect, test } from 'vitest';
import { isOn } from '../../src/takeoff/notes.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { INCH } from '../../src/units/grid.ts';
import { jobOf, shape } from './outline/site.ts';

test('a form of another depth is cautioned about on the forms ticket as well as on the mix ticket', () => {
  const job = jobOf([
    shape('pad', 'pad', [
      [0, 0],
      [12, 0],
      [12, 10],
      [0, 10],
    ]),
  ]);
  const practices = { ...job.practices, thickness: 4 * INCH, formBoard: '2x6' as const };
  const { notes } = takeoff({ ...job, practices });
  const codesOn = (station: 'forms' | 'mix' | 'steel') =>
    notes.filter((note) => isOn(station, note)).map(({ code }) => code);
  expect(codesOn('forms')).toContain('form-deeper');
  expect(codesOn('mix')).toContain('form-deeper');
  expect(codesOn('steel')).not.toContain('form-deeper');
  expect(codesOn('steel')).toContain('mesh-springs-back');
});
