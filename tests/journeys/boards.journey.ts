import type { Locator, Page } from '@playwright/test';
import { demoJob } from '../../src/job/demo.ts';
import { cornerOf, endWelcome, expect, go, openSample, spotOf, test, undo, words } from './site.ts';

/** The search has twenty seconds; a busy machine gets some more. */
const FOUND = { timeout: 40_000 };
/** Proved, or the best that was found in its time. */
const SETTLED = /^Proved in|^Best found in/;

function planLine(page: Page): Locator {
  return page.getByRole('region', { name: words.app.plan.title }).getByRole('status').last();
}

/** Which files came down so far, by name. */
function filesOf(page: Page): readonly string[] {
  const files: string[] = [];
  page.on('request', (request) => files.push(request.url()));
  return files;
}

test('the board plan has a first answer, then the best; a change starts over, undo has it back', async ({
  page,
}) => {
  const files = filesOf(page);
  await openSample(page);
  await endWelcome(page);
  const solver = () => files.filter((name) => name.endsWith('.wasm'));
  expect(solver(), 'the solver waits until a plan is looked at').toEqual([]);
  await go(page, 'forms');
  const line = planLine(page);
  await expect(line).toHaveText(SETTLED, FOUND);
  expect(solver()).toHaveLength(1);
  const said = (await line.textContent()) ?? '';

  const job = demoJob();
  const from = await spotOf(page, job, cornerOf(job, 'c24'));
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 20, from.y + 20, { steps: 4 });
  await expect(line).toHaveText(words.app.plan.waiting);
  await page.mouse.up();
  await expect(line).toHaveText(SETTLED, FOUND);
  await undo(page).click();
  await expect(line).toHaveText(said, { timeout: 2000 });
});

test('the leftovers go on the truck’s list in one step, and come off it by undo', async ({
  page,
}) => {
  await openSample(page);
  await go(page, 'forms');
  await expect(planLine(page)).toHaveText(SETTLED, FOUND);
  const put = page.getByRole('button', { name: words.app.plan.leftovers });
  await put.click();
  await expect(page.getByText(words.app.plan.leftoversDone)).toBeVisible();
  await expect(put).toBeHidden();
  await undo(page).click();
  await expect(put).toBeVisible();
  await expect(page.getByText(words.app.plan.leftoversDone)).toBeHidden();
});
