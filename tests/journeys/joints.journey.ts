import { demoJob } from '../../src/job/demo.ts';
import { INCH } from '../../src/units/grid.ts';
import {
  endWelcome,
  expect,
  figure,
  go,
  openSample,
  pickTool,
  spotOf,
  test,
  undo,
  words,
} from './site.ts';

/** The search has twenty seconds; a busy machine gets some more. */
const FOUND = { timeout: 40_000 };
const says = words.app.joints;

test('joints are proposed, taken over, one of them taken away and another drawn; the report follows', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  await go(page, 'joints');
  const standing = page.getByRole('region', { name: says.title });
  await expect(standing.getByRole('status')).toHaveText(says.proved, FOUND);
  await expect(figure(page, 'joint-proof')).toContainText(
    words.sheet.terms['joints-proved'],
    FOUND,
  );
  const proposed = await figure(page, 'joint-length').textContent();

  await standing.getByRole('button', { name: says.takeOver }).click();
  await expect(standing).toContainText(says.byHand);
  await expect(figure(page, 'joint-proof')).toContainText(words.sheet.terms['joints-by-hand']);
  await expect(figure(page, 'joint-length')).toHaveText(proposed ?? '');
  await expect(undo(page)).toHaveAttribute(
    'title',
    words.app.belt.undoWhat(words.app.done['draw-joints'] ?? ''),
  );
  const panels = await figure(page, 'joint-panels').textContent();

  // The joint from the stoop down through the porch post: its middle, by which it is picked.
  const job = demoJob();
  const on = await spotOf(page, job, { x: 36.25 * INCH, y: 20 * INCH });
  await page.mouse.click(on.x, on.y);
  await expect(page.getByLabel(words.sketch.selected.joint)).toHaveValue('control');
  await page.getByRole('button', { name: words.sketch.selected.removeFeature }).click();
  await expect(figure(page, 'joint-length')).not.toHaveText(proposed ?? '');
  await expect(figure(page, 'joint-panels')).not.toHaveText(panels ?? '');

  // Another across the pad, where the pour stops.
  await pickTool(page, 'draw-joint');
  for (const y of [0, 121.25]) {
    const spot = await spotOf(page, job, { x: 56 * INCH, y: y * INCH });
    await page.mouse.click(spot.x, spot.y);
  }
  await page.getByRole('button', { name: words.sketch.bar.endOpen }).click();
  await page.getByLabel(words.sketch.selected.joint).selectOption('construction');
  await expect(figure(page, 'joint-stop-length')).toBeVisible();

  await standing.getByRole('button', { name: says.propose }).click();
  await expect(figure(page, 'joint-stop-length')).toBeVisible();
  await expect(standing).not.toContainText(says.byHand);
});
