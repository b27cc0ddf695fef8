import { readFile } from 'node:fs/promises';
import { wordsFor } from '../../src/app/words/words.ts';
import { USUAL_TERMS } from '../../src/drawing/words/terms.ts';
import { unpacked, writtenIn } from '../sheet/readPdfText.ts';
import { endWelcome, expect, go, openSample, PHONE, test, words } from './site.ts';

const spanish = wordsFor('es', USUAL_TERMS);

for (const [screen, viewport] of [
  ['laptop', null],
  ['phone', PHONE],
] as const) {
  test(`the screen turns to Spanish and every ticket with it, ${screen}`, async ({ page }) => {
    if (viewport) await page.setViewportSize(viewport);
    await openSample(page);
    await endWelcome(page);
    await page.getByRole('button', { name: words.app.head.settings }).click();
    await page.getByRole('radio', { name: 'Español' }).check();
    await expect(page.locator('html')).toHaveAttribute('lang', 'es');
    // What the crew says for the form is chosen in the same place.
    await page.getByLabel(spanish.app.speech.form).selectOption('forma');
    await page.keyboard.press('Escape');
    const day = page.getByRole('navigation', { name: spanish.app.day });
    if (viewport) await page.getByRole('button', { name: spanish.app.pull.more }).click();
    for (const place of ['Terreno', 'Forma', 'Acero', 'Juntas', 'Mezcla']) {
      await day.getByRole('button', { name: place, exact: true }).click();
      await expect(page.getByRole('heading', { name: `Boleta: ${place}` })).toBeVisible();
    }
    // Nothing stands past the edge of the screen.
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
    // It is remembered on the device.
    await page.reload();
    await expect(page.getByRole('navigation', { name: spanish.app.day })).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  });
}

test('the sheet is in Spanish while the screen stays English', async ({ page }) => {
  await openSample(page);
  await go(page, 'sheet');
  await page.getByLabel(words.app.speech.sheet).selectOption('es');
  await expect(page.locator('svg').filter({ hasText: 'Orillas del colado' }).first()).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: words.app.sheet.pdf }).click();
  const written = writtenIn(unpacked(await readFile(await (await download).path())));
  expect(written).toContain('Orillas del colado');
  expect(written).toContain('Lista de materiales');
  expect(written).not.toContain(words.sheet.layout.materialList);
});
