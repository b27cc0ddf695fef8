import { type ChildProcess, spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import {
  endWelcome,
  expect,
  figure,
  go,
  LAPTOP,
  openJobs,
  openSample,
  saved,
  showPanel,
  stage,
  test,
  words,
} from './site.ts';

async function rename(page: Page, from: string, to: string): Promise<void> {
  const jobs = await openJobs(page);
  await jobs.getByRole('button', { name: `${words.app.jobs.rename}: ${from}` }).click();
  await jobs.getByLabel(words.app.jobs.name).last().fill(to);
  await jobs.getByRole('button', { name: words.app.jobs.save }).click();
  await jobs.getByRole('button', { name: words.app.jobs.close }).click();
}

/** A rectangle by typed sizes, as a new job of its own. */
async function startRectangle(page: Page, name: string, length: string, width: string) {
  const jobs = await openJobs(page);
  await jobs.getByLabel(words.app.jobs.name).fill(name);
  await jobs.getByLabel(words.app.jobs.length, { exact: true }).fill(length);
  await jobs.getByLabel(words.app.jobs.width, { exact: true }).fill(width);
  await jobs.getByRole('button', { name: words.app.jobs.make }).click();
  await expect(jobs).toBeHidden();
}

async function chooseFile(page: Page, name: string, text: string): Promise<void> {
  const jobs = await openJobs(page);
  await jobs.getByLabel(words.app.jobs.importFile).setInputFiles({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
}

async function exported(page: Page): Promise<string> {
  const jobs = await openJobs(page);
  const download = page.waitForEvent('download');
  await jobs.getByRole('button', { name: words.app.jobs.exportFile }).click();
  const text = await readFile(await (await download).path(), 'utf8');
  await jobs.getByRole('button', { name: words.app.jobs.close }).click();
  return text;
}

test('a reload comes back to the same job, change, station and panel', async ({ page }) => {
  await openSample(page);
  await startRectangle(page, 'Shed pad', `12'`, `10'-6"`);
  await expect(figure(page, 'net-area')).toHaveText(/^126/);
  await go(page, 'mix');
  await showPanel(page, 'practices');
  await saved(page);
  // A look elsewhere is kept a moment later than a change of the job is.
  await page.waitForTimeout(1000);
  await page.reload();
  await expect(page.getByRole('button', { name: /^Shed pad/ })).toBeVisible();
  await expect(page.getByRole('tab', { name: words.app.panels.practices })).toHaveAttribute(
    'aria-selected',
    'true',
  );
  await expect(
    page.getByRole('button', { name: words.app.places.mix, exact: true }),
  ).toHaveAttribute('aria-current', 'page');
  await go(page, 'ground');
  await showPanel(page, 'ticket');
  await expect(figure(page, 'net-area')).toHaveText(/^126/);
});

test('a reload comes back to the same view of the sketch', async ({ page }) => {
  await openSample(page);
  await endWelcome(page);
  const canvas = stage(page).locator('canvas').first();
  const whole = await canvas.screenshot();
  await stage(page).focus();
  await page.keyboard.press('+');
  await page.keyboard.press('+');
  await page.keyboard.press('ArrowLeft');
  await stage(page).blur();
  await page.waitForTimeout(1000);
  const close = await canvas.screenshot();
  expect(close.equals(whole)).toBe(false);
  await page.reload();
  await expect(figure(page, 'net-area')).toHaveText(/\d/);
  await expect.poll(async () => close.equals(await canvas.screenshot())).toBe(true);
});

test('several jobs are kept in a list, each with its own figures', async ({ page }) => {
  await openSample(page);
  await startRectangle(page, 'First pad', `10'`, `10'`);
  await startRectangle(page, 'Second pad', `20'`, `10'`);
  await expect(figure(page, 'net-area')).toHaveText(/^200/);
  await rename(page, 'Second pad', 'Carport pad');
  const jobs = await openJobs(page);
  await expect(jobs.getByRole('listitem').filter({ hasText: 'Carport pad' })).toBeVisible();
  await jobs.getByRole('button', { name: `${words.app.jobs.open}: First pad` }).click();
  await expect(figure(page, 'net-area')).toHaveText(/^100/);
});

test('a job file that was exported comes back the same', async ({ page }) => {
  await openSample(page);
  const area = await figure(page, 'net-area').textContent();
  const text = await exported(page);
  expect(JSON.parse(text)).toMatchObject({ version: expect.any(Number) });
  await startRectangle(page, 'Something else', `5'`, `5'`);
  await expect(figure(page, 'net-area')).toHaveText(/^25/);
  await chooseFile(page, 'sample.json', text);
  await expect(figure(page, 'net-area')).toHaveText(area ?? '');
  expect(await exported(page)).toBe(text);
});

test('a broken, a foreign and a newer file are refused in words, and the job stays', async ({
  page,
}) => {
  await openSample(page);
  const area = await figure(page, 'net-area').textContent();
  const good = JSON.parse(await exported(page));
  const files = {
    'cut-off.json': JSON.stringify(good).slice(0, 400),
    'recipe.json': '{"flour": 500}',
    'later.json': JSON.stringify({ ...good, version: good.version + 1 }),
    'no-number.json': JSON.stringify(good).replace(/"x":-?\d+/, '"x":1e999'),
    'list.json': '[]',
  };
  const told = new Set<string>();
  for (const [name, text] of Object.entries(files)) {
    await chooseFile(page, name, text);
    const alert = page.getByRole('dialog').getByRole('alert');
    await expect(alert).toContainText(name);
    told.add((await alert.getByRole('listitem').first().textContent()) ?? '');
    await page.getByRole('dialog').getByRole('button', { name: words.app.jobs.close }).click();
  }
  // Not one sentence for all: each says what is wrong with this file.
  expect(told.size).toBeGreaterThanOrEqual(4);
  await expect(figure(page, 'net-area')).toHaveText(area ?? '');
});

test('after the first visit it opens with the server gone, and still figures', async ({
  browser,
}) => {
  const port = 30_000 + (process.pid % 10_000);
  const server = await serveBuild(port);
  const context = await browser.newContext({ viewport: LAPTOP });
  try {
    const page = await context.newPage();
    await page.goto(`http://localhost:${port}/`);
    await expect(figure(page, 'net-area')).toHaveText(/\d/);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    server.kill();
    await new Promise((resolve) => server.once('exit', resolve));
    await page.reload();
    await expect(figure(page, 'net-area')).toHaveText(/\d/);
    await startRectangle(page, 'No signal here', `12'`, `12'`);
    await expect(figure(page, 'net-area')).toHaveText(/^144/);
    await go(page, 'sheet');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: words.app.sheet.pdf }).click();
    expect((await readFile(await (await download).path())).subarray(0, 5).toString()).toBe('%PDF-');
    const says = words.app.handOver;
    await page.getByRole('button', { name: says.open }).click();
    const field = page.getByLabel(says.link.label);
    await expect(field).toHaveValue(/#job1\./);
    const link = await field.inputValue();
    const zip = page.waitForEvent('download');
    await page.getByRole('button', { name: `${says.tables.all}: ${says.files.save}` }).click();
    expect((await readFile(await (await zip).path())).subarray(0, 2).toString()).toBe('PK');
    await page.goto('about:blank');
    await page.goto(link);
    await expect(figure(page, 'net-area')).toHaveText(/^144/);
    await expect(page.getByRole('alert').filter({ hasText: 'No signal here' })).toBeVisible();
  } finally {
    server.kill();
    await context.close();
  }
});

async function serveBuild(port: number): Promise<ChildProcess> {
  const program = fileURLToPath(new URL('../run/serve.mjs', import.meta.url));
  const server = spawn(process.execPath, [program], {
    env: { ...process.env, PORT: String(port) },
    stdio: 'inherit',
  });
  await expect(async () => {
    expect((await fetch(`http://localhost:${port}/`)).ok).toBe(true);
  }).toPass();
  return server;
}
