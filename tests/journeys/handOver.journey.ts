import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from '@playwright/test';
import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import jsQR from 'jsqr';
import {
  endWelcome,
  expect,
  figure,
  go,
  openJobs,
  openSample,
  PHONE,
  saved,
  showPanel,
  test,
  words,
} from './site.ts';

const says = words.app.handOver;

async function openHandOver(page: Page): Promise<Locator> {
  await go(page, 'sheet');
  await page.getByRole('button', { name: says.open }).click();
  const dialog = page.getByRole('dialog', { name: says.title });
  await expect(dialog).toBeVisible();
  return dialog;
}

async function linkOf(page: Page): Promise<string> {
  const dialog = await openHandOver(page);
  const field = dialog.getByLabel(says.link.label);
  await expect(field).toHaveValue(/#job1\./);
  const link = await field.inputValue();
  await dialog.getByRole('button', { name: says.close }).click();
  return link;
}

async function textOf(page: Page, press: () => Promise<void>): Promise<Buffer> {
  const download = page.waitForEvent('download');
  await press();
  return readFile(await (await download).path());
}

test('a copied link opens a copy of the job with the same figures, once', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openSample(page);
  await endWelcome(page);
  const area = await figure(page, 'net-area').textContent();
  await saved(page);
  const dialog = await openHandOver(page);
  await dialog.getByRole('button', { name: says.link.copy }).click();
  await expect(dialog.getByRole('status').filter({ hasText: says.link.copied })).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());

  const other = await context.newPage();
  await other.goto(link);
  await expect(
    other.getByRole('alert').filter({ hasText: says.opened.copy('').slice(3, 30) }),
  ).toBeVisible();
  await expect(figure(other, 'net-area')).toHaveText(area ?? '');
  expect(new URL(other.url()).hash).toBe('');
  const jobs = await openJobs(other);
  await expect(jobs.getByRole('listitem')).toHaveCount(2);
  await jobs.getByRole('button', { name: words.app.jobs.close }).click();
  await saved(other);
  await other.reload();
  await expect(figure(other, 'net-area')).toHaveText(area ?? '');
  const again = await openJobs(other);
  await expect(again.getByRole('listitem')).toHaveCount(2);
});

test('a link that was cut off is told so, and the open job stays, also in an open page', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  const area = await figure(page, 'net-area').textContent();
  const link = await linkOf(page);
  await go(page, 'ground');
  await saved(page);
  const told = page.getByRole('alert').filter({ hasText: says.opened.refused });
  // Into the address of the open page, which loads nothing anew; then as a page that is opened.
  await page.evaluate(
    (cut) => {
      location.hash = cut;
    },
    new URL(link).hash.slice(0, 300),
  );
  await expect(told).toContainText(words.sheet.problems['link-cut-short']);
  await expect(figure(page, 'net-area')).toHaveText(area ?? '');
  expect(new URL(page.url()).hash).toBe('');
  await told.getByRole('button', { name: says.opened.close }).click();
  await expect(told).toBeHidden();

  const fresh = await page.context().newPage();
  await fresh.goto(link.slice(0, -40));
  await expect(
    fresh.getByRole('alert').filter({ hasText: words.sheet.problems['link-cut-short'] }),
  ).toBeVisible();
  await expect(figure(fresh, 'net-area')).toHaveText(area ?? '');
  const jobs = await openJobs(fresh);
  await expect(jobs.getByRole('listitem')).toHaveCount(1);
});

test('tables go out as CSV, one by one and all in a zip, with the figures of the ticket', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  await go(page, 'mix');
  const bags = Number.parseInt((await figure(page, 'bags').textContent()) ?? '', 10);
  const name = says.tables.saveTable(words.sheet.tables['bags-by-mix']);
  const one = await textOf(page, () => page.getByRole('button', { name }).click());
  const rows: readonly Record<string, string>[] = parse(one, { bom: true, columns: true });
  const column = `${words.sheet.columns.bags} (${words.sheet.csv.number})`;
  expect(rows.reduce((sum, row) => sum + Number(row[column]), 0)).toBe(bags);

  const jobs = await openJobs(page);
  await jobs.getByRole('button', { name: says.open }).click();
  const dialog = page.getByRole('dialog', { name: says.title });
  const zip = await textOf(page, () =>
    dialog.getByRole('button', { name: `${says.tables.all}: ${says.files.save}` }).click(),
  );
  const inside = Object.values(unzipSync(zip)).map((bytes) => Buffer.from(bytes));
  expect(inside.length).toBeGreaterThan(5);
  expect(inside.some((bytes) => bytes.equals(one))).toBe(true);
  await dialog.getByRole('button', { name: says.close }).click();
  await expect(jobs).toBeVisible();
});

test('the sketch goes out as a drawing and as a picture at the stated scale', async ({ page }) => {
  await openSample(page);
  await endWelcome(page);
  await showPanel(page, 'ticket');
  await go(page, 'forms');
  const jobs = await openJobs(page);
  await jobs.getByRole('button', { name: says.open }).click();
  const dialog = page.getByRole('dialog', { name: says.title });
  await expect(dialog.getByLabel(says.sketch.station)).toHaveValue('forms');
  const svg = await textOf(page, () =>
    dialog.getByRole('button', { name: `${says.sketch.svg}: ${says.files.save}` }).click(),
  );
  expect(svg.toString()).toContain('1/4&quot; = 1');
  const [, width] = /width="([\d.]+)mm"/.exec(svg.toString()) ?? [];
  const png = await textOf(page, () =>
    dialog.getByRole('button', { name: `${says.sketch.png}: ${says.files.save}` }).click(),
  );
  // The head of a PNG: its width in dots stands at byte 16.
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect(png.readUInt32BE(16)).toBe(Math.round((Number(width) * 300) / 25.4));
});

test.describe('on a phone', () => {
  test.use({ viewport: PHONE, hasTouch: true });

  test('the device’s own list of where to send to gets the link and the files', async ({
    page,
  }) => {
    await page.addInitScript(() => {
      const sent: unknown[] = [];
      Object.assign(window, { sent });
      navigator.canShare = () => true;
      navigator.share = async ({ url, files } = {}) => {
        if (sent.length === 2) throw new DOMException('put away', 'AbortError');
        sent.push(url ?? [files![0]!.name, files![0]!.type, files![0]!.size]);
      };
    });
    await openSample(page);
    const dialog = await openHandOver(page);
    const link = await dialog.getByLabel(says.link.label).inputValue();
    await dialog.getByRole('button', { name: says.link.send }).click();
    await expect(dialog.getByText(says.outcome.sent)).toBeVisible();
    const pdf = dialog.getByRole('button', { name: `${says.files.pdf}: ${says.files.send}` });
    await pdf.click();
    await expect(dialog.getByText(says.outcome.sent)).toHaveCount(2);
    const sent = await page.evaluate(() => Reflect.get(window, 'sent') as unknown[]);
    expect(sent[0]).toBe(link);
    expect(sent[1]).toEqual(['Side-yard-landing.pdf', 'application/pdf', expect.any(Number)]);
    await pdf.click();
    await expect(dialog.getByText(says.outcome.putAway)).toBeVisible();
    for (const button of await dialog.getByRole('button').all()) {
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    }
  });
});

test.describe('the code on the sheet', () => {
  const ADDRESS = 'https://pads.example/yard/';
  const BUILD = new URL('../../dist/', import.meta.url);
  test.use({ serviceWorkers: 'block' });

  test('is read from the page as it is painted, and opens the job', async ({ page, context }) => {
    // A host that others could reach: on an address of this device alone no code is printed.
    await context.route(`${ADDRESS}**`, (route) => {
      const path = new URL(route.request().url()).pathname.replace('/yard/', '') || 'index.html';
      return route.fulfill({ path: fileURLToPath(new URL(path, BUILD)) });
    });
    await page.goto(ADDRESS);
    const area = await figure(page, 'net-area').textContent();
    await endWelcome(page);
    await go(page, 'sheet');
    const last = page.locator('.sheet-page svg').last();
    await expect(last).toContainText(words.sheet.layout.code.title);
    const svg = await last.evaluate((drawn) => new XMLSerializer().serializeToString(drawn));
    const { width, height, pixels } = await page.evaluate(async (text) => {
      const image = new Image();
      image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
      await image.decode();
      const canvas = new OffscreenCanvas(image.naturalWidth * 2, image.naturalHeight * 2);
      const pen = canvas.getContext('2d')!;
      pen.fillStyle = '#fff';
      pen.fillRect(0, 0, canvas.width, canvas.height);
      pen.drawImage(image, 0, 0, canvas.width, canvas.height);
      const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
      // A pixel a letter: as numbers they would take a minute to come over.
      let dark = '';
      for (let i = 0; i < data.length; i += 4) dark += data[i]! < 128 ? '1' : '0';
      return { width: canvas.width, height: canvas.height, pixels: dark };
    }, svg);
    const rgba = new Uint8ClampedArray(pixels.length * 4).fill(255);
    for (let i = 0; i < pixels.length; i++) if (pixels[i] === '1') rgba.fill(0, i * 4, i * 4 + 3);
    const read = jsQR(rgba, width, height)?.data ?? '';
    expect(read).toMatch(/^https:\/\/pads\.example\/yard\/#job1:\d+$/);
    const phone = await context.newPage();
    await phone.goto(read);
    await expect(phone.getByRole('alert').filter({ hasText: 'Side yard landing' })).toBeVisible();
    await expect(figure(phone, 'net-area')).toHaveText(area ?? '');
  });
});
