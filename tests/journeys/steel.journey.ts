import type { Page } from '@playwright/test';
import { endWelcome, expect, figure, go, openSample, showPanel, test, words } from './site.ts';

/** The search has twenty seconds; a busy machine gets some more. */
const FOUND = { timeout: 40_000 };
const { standing } = words.app.mesh;
const practices = words.app.practices;

function standingOf(page: Page, called: string) {
  return page.getByRole('region', { name: called }).getByRole('status').last();
}

test('mesh by its style, then bars with dowels; how each search ended is said; all of it on the sheet', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  await go(page, 'steel');
  await expect(figure(page, 'mesh-sheets')).toContainText(/\d+ sheets?/);
  await expect(standingOf(page, standing.layout)).toHaveText(
    /^Proved: no layout|^Best found in/,
    FOUND,
  );
  const weight = await figure(page, 'mesh-weight').textContent();

  await showPanel(page, 'practices');
  await page.getByLabel(practices.fields.meshStyle.label, { exact: true }).selectOption('6x6-W2.9');
  await showPanel(page, 'ticket');
  await expect(figure(page, 'mesh-weight')).not.toHaveText(weight ?? '');

  await showPanel(page, 'practices');
  await page.getByLabel(practices.fields.steelKind.label, { exact: true }).selectOption('bars');
  await page.getByLabel(practices.fields.barPrice.label).fill('7.50');
  await page.getByLabel(practices.fields.barPrice.label).press('Enter');
  await page.getByLabel(practices.fields.dowels.label, { exact: true }).check();
  await showPanel(page, 'ticket');
  await expect(figure(page, 'bars-to-buy')).toContainText(/\d+ bars/);
  await expect(figure(page, 'bars-money')).toContainText('$');
  await expect(figure(page, 'dowels')).toContainText(/\d+ dowels/);
  await expect(figure(page, 'mesh-sheets')).toBeHidden();
  await expect(standingOf(page, standing.bars)).toHaveText(/^Proved in|^Best found in/, FOUND);

  await go(page, 'sheet');
  const { steel } = words.sheet.layout;
  for (const sign of [steel.corner, steel.dowel, steel.running]) {
    await expect(page.getByText(sign).first()).toBeAttached();
  }
  await expect(page.getByText(words.sheet.tables['bar-lengths']).first()).toBeAttached();
});
