import { expect, test } from 'vitest';
import { en as drawing } from '../../../src/drawing/words/en.ts';
import type { Feature, Service } from '../../../src/job/job.ts';
import { SERVICES } from '../../../src/job/services.ts';
import { blankJob } from '../../../src/job/start.ts';
import { utilityRows } from '../../../src/sheet/pages/utilityLegend.ts';
import { en as sheet } from '../../../src/sheet/words/en.ts';
import { FOOT } from '../../../src/units/grid.ts';

function line(service: Service): Feature {
  const corners = [0, 9].map((x) => ({ id: `${service}${x}`, x: x * FOOT, y: 0, rise: 0 }));
  return {
    id: service,
    name: '',
    kind: 'utility-line',
    service,
    shape: { form: 'outline', closed: false, corners },
  };
}

function rows(...services: readonly Service[]) {
  const job = { ...blankJob(), features: services.map(line) };
  return utilityRows(job, { sheet, drawing }, 24).map((row) =>
    row(0, 0, 80).flatMap((mark) => {
      if (mark.kind === 'text') return [mark.text];
      return mark.kind === 'line' && mark.style.startsWith('utility') ? [mark.style] : [];
    }),
  );
}

test('a row for each kind of buried line that is drawn, with its line and its word', () => {
  expect(rows()).toEqual([]);
  expect(rows('sewer', 'gas', 'sewer')).toEqual([
    [sheet.layout.buried],
    ['utility-gas', 'GAS: Gas'],
    ['utility-sewer', 'SEWER: Sewer, drain'],
    // Words begin 24 mm from the left: 36 mm are left for them.
    ['No stakes within'],
    [`2'-0"`],
  ]);
});

test('no row is cut in the narrow column beside a plan', () => {
  const job = { ...blankJob(), features: SERVICES.map(line) };
  const words = { sheet, drawing };
  for (const units of ['feet-inches', 'decimal-feet', 'metric'] as const) {
    // The column is 60 mm wide within its margins, and words begin 17 mm from its left.
    const said = utilityRows({ ...job, units }, words, 17).flatMap((row) =>
      row(0, 0, 60).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
    );
    expect(said).toHaveLength(SERVICES.length + 2);
    expect(said.filter((text) => text.includes('…'))).toEqual([]);
  }
});
