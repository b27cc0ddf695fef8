import { readFile } from 'node:fs/promises';
import { demoJob } from '../../src/job/demo.ts';
import { expect, go, openSample, test, words } from './site.ts';

test('the sheet saves as a PDF, and what writes it is loaded only then', async ({ page }) => {
  const writers: string[] = [];
  page.on('request', (request) => {
    if (/pdf/i.test(new URL(request.url()).pathname)) writers.push(request.url());
  });
  await openSample(page);
  await go(page, 'sheet');
  expect(writers).toEqual([]);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: words.app.sheet.pdf }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/\.pdf$/);
  const bytes = await readFile(await file.path());
  expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  expect(bytes.subarray(-8).toString('latin1')).toContain('%%EOF');
  expect(bytes.length).toBeGreaterThan(10_000);
  expect(writers.length).toBeGreaterThan(0);
});

test('pages are chosen, remembered on the device, and one page holds a small pad', async ({
  page,
}) => {
  await openSample(page);
  await go(page, 'sheet');
  const pages = page.locator('figure').filter({ has: page.locator('svg') });
  await expect(pages.first()).toBeVisible();
  const whole = await pages.count();
  const forms = page.getByRole('checkbox', { name: words.app.sheet.pageKinds.forms });
  await forms.uncheck();
  await expect.poll(() => pages.count()).toBeLessThan(whole);
  const fewer = await pages.count();
  await page.reload();
  await go(page, 'sheet');
  await expect(forms).not.toBeChecked();
  await expect.poll(() => pages.count()).toBe(fewer);
  await page.getByRole('checkbox', { name: words.app.sheet.onePage }).check();
  await expect.poll(() => pages.count()).toBeLessThan(4);
  await expect(forms).toBeDisabled();
});

test('in print only the sheet is left, at its true size', async ({ page }) => {
  await openSample(page);
  await go(page, 'sheet');
  const drawn = page.locator('svg').filter({ hasText: demoJob().name }).first();
  await expect(drawn).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(drawn).toBeVisible();
  await expect(page.getByRole('navigation', { name: words.app.day })).toBeHidden();
  await expect(page.getByRole('button', { name: words.app.sheet.print })).toBeHidden();
  const box = await drawn.boundingBox();
  const inches = [(box?.width ?? 0) / 96, (box?.height ?? 0) / 96];
  // US letter, either way up.
  expect(Math.min(...inches)).toBeCloseTo(8.5, 1);
  expect(Math.max(...inches)).toBeCloseTo(11, 1);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
});
