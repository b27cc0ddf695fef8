import type { Page } from '@playwright/test';
import { endWelcome, expect, go, openJobs, openSample, PHONE, saved, test, words } from './site.ts';

const { pourDay } = words.app;

/** A part of the pour by its name. */
async function part(page: Page, which: 'before' | 'pour' | 'after') {
  await page
    .getByRole('group', { name: pourDay.parts.label })
    .getByRole('button', { name: pourDay.parts[which], exact: true })
    .click();
}

test.use({ viewport: PHONE });

test('batches counted on a phone, the front tapped, a reload, the close-out, and the next job’s offer', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  await go(page, 'pour-day');
  await page.getByRole('checkbox', { name: pourDay.before.checks.depth }).check();
  await expect(page.getByText(pourDay.before.done('1', '16'))).toBeVisible();
  await page.getByRole('button', { name: pourDay.before.start }).click();

  const plus = page.getByRole('button', { name: `+1 ${pourDay.pour.batchIn}` });
  await expect(plus).toBeVisible();
  // A glove is no pen.
  expect((await plus.boundingBox())?.height).toBeGreaterThanOrEqual(56);
  for (let batch = 0; batch < 4; batch++) await plus.click();
  await page.getByRole('button', { name: pourDay.pour.takeBackWhat.batch }).click();
  await expect(page.getByText(/^3 of \d+ batches$/)).toBeVisible();

  await page.getByRole('button', { name: pourDay.front.quarter, exact: true }).click();
  await expect(page.getByText(pourDay.front.placed('25%'))).toBeVisible();
  await expect(page.getByText(/At first \d+ were expected\./)).toBeVisible();
  // A finger on the sketch moves the front on.
  const sketch = page.getByRole('img', { name: pourDay.front.sketch });
  await sketch.scrollIntoViewIfNeeded();
  const box = await sketch.boundingBox();
  if (!box) throw new Error('the sketch is not on the page');
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await expect(page.getByText(pourDay.front.placed('25%'))).toBeHidden();
  await page.getByRole('button', { name: pourDay.front.half, exact: true }).click();
  await expect(page.getByText(pourDay.front.placed('50%'))).toBeVisible();
  await saved(page);

  await page.reload();
  await expect(page.getByText(/^3 of \d+ batches$/)).toBeVisible();
  await expect(page.getByText(pourDay.front.placed('50%'))).toBeVisible();

  await part(page, 'after');
  await page.getByRole('button', { name: pourDay.after.close }).click();
  await expect(page.getByText(pourDay.after.odd)).toBeVisible();
  const used = page.getByLabel(/bags used$/);
  await used.first().fill('80');
  await used.first().press('Enter');
  await used.last().fill('minus 3');
  await used.last().press('Enter');
  await expect(used.last()).toHaveAttribute('aria-invalid', 'true');
  await used.last().fill('26');
  await used.last().press('Enter');
  await expect(page.getByText(/^Used : net = 0\.\d+|^Used : net = 1\.\d+/)).toBeVisible();
  await expect(page.getByText(pourDay.after.odd)).toBeHidden();
  await expect(page.getByText(pourDay.history.thisClosed)).toBeVisible();
  await saved(page);

  const jobs = await openJobs(page);
  await jobs.getByLabel(words.app.jobs.name).fill('Next pad');
  await jobs.getByRole('button', { name: words.app.jobs.make }).click();
  await expect(jobs).toBeHidden();
  await go(page, 'mix');
  await page.getByRole('button', { name: words.app.pull.more }).click();
  const offer = page.getByRole('button', { name: /^Use \d+% instead of (?:10%|the named parts)$/ });
  await expect(offer).toBeVisible();
  const share = /\d+%/.exec((await offer.textContent()) ?? '')?.[0] ?? '';
  await offer.click();
  await expect(page.getByText(pourDay.history.asIs(share))).toBeVisible();
});
