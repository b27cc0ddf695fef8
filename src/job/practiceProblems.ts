import type { Problem } from '../units/result.ts';
import { orderDoubles } from './bidProblems.ts';
import type { Practices } from './job.ts';

/** What is wrong between practices that are right one by one. `at` stands before each place. */
export function practiceProblems(
  { mix, waste, pourDay, order }: Practices,
  at: string,
): readonly Problem[] {
  const place = (name: string) => (at === '' ? name : `${at}.${name}`);
  const problems: Problem[] = [];
  const twice = (rows: readonly { readonly id: string }[], list: string) => {
    rows.forEach(({ id }, index) => {
      if (rows.findIndex((one) => one.id === id) !== index) {
        const where = place(`${list}[${index}].id`);
        problems.push({ code: 'field-id-twice', where, facts: { id } });
      }
    });
  };
  twice(mix.mixes, 'mix.mixes');
  twice(waste.extras, 'waste.extras');
  const ids = mix.mixes.map(({ id }) => id);
  mix.mixes.forEach(({ water, set }, index) => {
    const outOfOrder = (name: string) =>
      problems.push({ code: 'field-order', where: place(`mix.mixes[${index}].${name}`) });
    if (water && water.least > water.most) outOfOrder('water');
    if (set.initial > set.final) outOfOrder('set');
  });
  const checks = pourDay?.checks ?? [];
  checks.forEach(({ id }, index) => {
    if (checks.findIndex((one) => one.id === id) !== index) {
      const where = place(`pourDay.checks[${index}].id`);
      problems.push({ code: 'field-id-twice', where, facts: { id } });
    }
  });
  for (const role of ['main', 'other'] as const) {
    const id = mix.blend[role];
    if (id !== undefined && !ids.includes(id)) {
      const where = place(`mix.blend.${role}`);
      problems.push({ code: 'field-no-such-mix', where, facts: { mix: id } });
    }
  }
  return [...problems, ...(order ? orderDoubles(order, place('order.')) : [])];
}
