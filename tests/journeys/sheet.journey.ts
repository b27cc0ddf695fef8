import { readFile } from 'node:fs/promises';
import { demoJob } from '../../src/job/demo.ts';
import { expect, go, openSample, test, words } from './site.ts';

test('the sheet saves as a PDF', async ({ page }) => {
  await openSample(page);
  await go(page, 'sheet');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: words.app.sheet.pdf }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/\.pdf$/);
  const bytes = await readFile(await file.path());
  expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  expect(bytes.subarray(-8).toString('latin1')).toContain('%%EOF');
  expect(bytes.length).toBeGreaterThan(10_000);
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
