import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, go, LAPTOP, openJobs, openSample, PHONE, showPanel, test, words } from './site.ts';

const SIZES = { phone: PHONE, laptop: LAPTOP };

async function useLight(page: Page, theme: 'light' | 'dark'): Promise<void> {
  await page.getByRole('button', { name: words.app.head.settings }).click();
  await page.getByLabel(words.app.theme[theme], { exact: true }).check();
  await page.keyboard.press('Escape');
}

async function faults(page: Page): Promise<readonly string[]> {
  // What is inside a drawing is one picture to whoever can't see it; axe is slow on its thousands of strokes.
  const { violations } = await new AxeBuilder({ page }).exclude('svg > *').analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

for (const [name, viewport] of Object.entries(SIZES)) {
  test.describe(`on a ${name}`, () => {
    test.use({ viewport, hasTouch: name === 'phone' });

    for (const theme of ['light', 'dark'] as const) {
      test(`axe finds nothing serious, ${words.app.theme[theme]}`, async ({ page }) => {
        await openSample(page);
        await useLight(page, theme);
        expect(await faults(page), 'ground').toEqual([]);
        for (const panel of ['practices', 'corners'] as const) {
          await showPanel(page, panel);
          expect(await faults(page), panel).toEqual([]);
        }
        await go(page, 'sheet');
        await expect(page.getByRole('button', { name: words.app.sheet.pdf })).toBeEnabled();
        expect(await faults(page), 'sheet').toEqual([]);
        await openJobs(page);
        expect(await faults(page), 'jobs').toEqual([]);
      });
    }

    test('nothing sticks out sideways', async ({ page }) => {
      await openSample(page);
      const sideways = () =>
        page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
      for (const place of [
        'ground',
        'forms',
        'steel',
        'joints',
        'mix',
        'order',
        'sheet',
      ] as const) {
        await go(page, place);
        expect(await sideways(), place).toBeLessThanOrEqual(0);
      }
      await go(page, 'ground');
      for (const panel of ['practices', 'corners'] as const) {
        await showPanel(page, panel);
        expect(await sideways(), panel).toBeLessThanOrEqual(0);
      }
    });
  });
}

test.describe('for a gloved thumb', () => {
  test.use({ viewport: PHONE, hasTouch: true, isMobile: true });

  test('every button on the phone is at least 44 px each way', async ({ page }) => {
    await openSample(page);
    const small = async () =>
      page.evaluate(() => {
        const found: string[] = [];
        for (const one of document.querySelectorAll('button, select, summary, [role="tab"]')) {
          const { width, height } = one.getBoundingClientRect();
          if (width === 0 || height === 0) continue;
          if (width < 43.5 || height < 43.5) {
            const name = one.getAttribute('aria-label') ?? one.textContent;
            found.push(`${name}: ${Math.round(width)} × ${Math.round(height)}`);
          }
        }
        return found;
      });
    expect(await small(), 'ground').toEqual([]);
    await showPanel(page, 'practices');
    expect(await small(), 'practices').toEqual([]);
    await showPanel(page, 'corners');
    expect(await small(), 'corners').toEqual([]);
    await go(page, 'sheet');
    expect(await small(), 'sheet').toEqual([]);
    await openJobs(page);
    expect(await small(), 'jobs').toEqual([]);
  });
});
