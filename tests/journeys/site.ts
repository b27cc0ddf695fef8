/** What every journey stands on: a page that must stay free of errors, and the site as a person finds it. */
import { test as base, expect, type Locator, type Page } from '@playwright/test';
import { en as app } from '../../src/app/words/en.ts';
import type { Point } from '../../src/geometry/point.ts';
import type { Job } from '../../src/job/job.ts';
import { en as sheet } from '../../src/sheet/words/en.ts';
import { fitView, type Spot, toScreen } from '../../src/sketch/view.ts';
import { en as sketch } from '../../src/sketch/words/en.ts';

export { expect };
export const words = { app, sheet, sketch };

export const LAPTOP = { width: 1366, height: 768 };
export const PHONE = { width: 390, height: 844 };

/** A test whose page may say nothing in anger: an error on the console or an uncaught one fails it. */
export const test = base.extend<{ quietPage: undefined }>({
  quietPage: [
    async ({ page }, use) => {
      const said: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error') said.push(message.text());
      });
      page.on('pageerror', (error) => said.push(String(error)));
      await use(undefined);
      expect(said, 'errors on the console').toEqual([]);
    },
    { auto: true },
  ],
  viewport: LAPTOP,
});

export function stage(page: Page): Locator {
  return page.getByRole('application', { name: sketch.stage.label });
}

/** Opens the app afresh: the sample job, its figures standing. */
export async function openSample(page: Page): Promise<void> {
  await page.goto('./');
  await expect(stage(page)).toBeVisible();
  await expect(figure(page, 'net-area')).toHaveText(/\d/);
}

/** Lets the word of welcome go, so that it takes no room. */
export async function endWelcome(page: Page): Promise<void> {
  const close = page.getByRole('button', { name: app.welcome.close });
  if (await close.isVisible()) await close.click();
  await expect(close).toBeHidden();
}

/** The value of a figure on the open ticket, found by its name as people read it. */
export function figure(page: Page, key: keyof typeof sheet.figures): Locator {
  return page
    .locator('summary')
    .filter({ has: page.getByText(String(sheet.figures[key]), { exact: true }) })
    .locator('span')
    .last();
}

/** A figure's text once it rests: the page shows a drag frame by frame, so the last frame may still be on its way. */
export async function restingText(shown: Locator): Promise<string> {
  let seen = await shown.textContent();
  await expect
    .poll(
      async () => {
        const before = seen;
        seen = await shown.textContent();
        return seen === before;
      },
      // Slower figures come from the worker: on a busy machine some tenths of a second apart.
      { intervals: [800], timeout: 15_000 },
    )
    .toBe(true);
  return seen ?? '';
}

export async function go(page: Page, place: keyof typeof app.places): Promise<void> {
  await page
    .getByRole('navigation', { name: app.day })
    .getByRole('button', { name: app.places[place], exact: true })
    .click();
}

export async function showPanel(page: Page, panel: 'ticket' | 'practices' | 'corners') {
  await page.getByRole('tab', { name: app.panels[panel] }).click();
}

export async function openJobs(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: /open the list of jobs/ }).click();
  const dialog = page.getByRole('dialog', { name: app.jobs.title });
  await expect(dialog).toBeVisible();
  return dialog;
}

export function undo(page: Page): Locator {
  return page.getByRole('button', { name: app.belt.undo, exact: true });
}

export async function pickTool(page: Page, tool: keyof typeof app.belt.tools): Promise<void> {
  const button = page.getByRole('button', { name: app.belt.tools[tool], exact: true }).first();
  if (!(await button.isVisible())) {
    await page.getByRole('button', { name: app.belt.addLabel }).click();
  }
  await page
    .getByRole('button', { name: app.belt.tools[tool], exact: true })
    .filter({ visible: true })
    .first()
    .click();
}

/** Waits until all is kept on the device. */
export async function saved(page: Page): Promise<void> {
  await expect(page.getByRole('status').filter({ hasText: app.saving.saved })).toBeVisible();
}

/** Where a place of the site is on the page, while the whole site is fitted to the stage. */
export async function spotOf(page: Page, job: Job, at: Point): Promise<Spot> {
  const box = await stage(page).boundingBox();
  if (!box) throw new Error('the stage is not on the page');
  const size = { width: box.width, height: box.height };
  const spot = toScreen(fitView(job, size), size, at);
  return { x: box.x + spot.x, y: box.y + spot.y };
}

export function cornerOf(job: Job, id: string): Point {
  for (const { shape } of job.features) {
    const corner = shape.form === 'outline' ? shape.corners.find((one) => one.id === id) : null;
    if (corner) return corner;
  }
  throw new Error(`the job has no corner ${id}`);
}
