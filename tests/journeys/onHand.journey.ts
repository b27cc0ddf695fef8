import { demoJob } from '../../src/job/demo.ts';
import { FOOT } from '../../src/units/grid.ts';
import {
  endWelcome,
  expect,
  go,
  openSample,
  PHONE,
  pickTool,
  spotOf,
  test,
  undo,
  words,
} from './site.ts';

const says = words.app.boards;

test.describe('on a phone', () => {
  test.use({ viewport: PHONE, hasTouch: true });

  test('a truck list is typed, refused where it makes no sense, and taken back', async ({
    page,
  }) => {
    await openSample(page);
    await endWelcome(page);
    await go(page, 'forms');
    await page.getByRole('button', { name: words.app.pull.more }).click();
    await page.getByRole('heading', { name: says.title }).click();
    const truck = page.getByRole('region', { name: says.truck.title });
    const form = truck.locator('form');
    const rows = truck.getByRole('group');
    await expect(rows).toHaveCount(demoJob().lumber.truck.length);

    await form.getByLabel(says.fields.length).fill('16');
    await form.getByRole('button', { name: says.truck.add }).click();
    await expect(form.getByRole('alert').filter({ hasText: `16'-0"` })).toBeVisible();
    await form.getByLabel(says.fields.count).fill('3');
    await form.getByLabel(says.fields.length).fill('16 ft');
    await form.getByLabel(says.fields.length).press('Enter');
    await expect(truck.getByText(says.truck.added(3, '2×4', `16'-0"`))).toBeVisible();
    await expect(rows).toHaveCount(demoJob().lumber.truck.length + 1);
    await expect(form.getByLabel(says.fields.length)).toBeFocused();

    await undo(page).click();
    await expect(rows).toHaveCount(demoJob().lumber.truck.length);
  });
});

test('a utility line is drawn across the yard, and told what it carries', async ({ page }) => {
  await openSample(page);
  await endWelcome(page);
  await pickTool(page, 'draw-utility-line');
  const job = demoJob();
  for (const x of [17, 18]) {
    const spot = await spotOf(page, job, { x: x * FOOT, y: (x === 17 ? -3 : 2) * FOOT });
    await page.mouse.click(spot.x, spot.y);
  }
  await page.getByRole('button', { name: words.sketch.bar.endOpen }).click();
  const carries = page.getByLabel(words.sketch.selected.service);
  await expect(carries).toHaveValue('electric');
  await carries.selectOption('gas');
  await expect(carries).toHaveValue('gas');
  await expect(undo(page)).toHaveAttribute(
    'title',
    words.app.belt.undoWhat(words.app.done['set-feature'] ?? ''),
  );
});
