import { demoJob } from '../../src/job/demo.ts';
import {
  cornerOf,
  endWelcome,
  expect,
  figure,
  go,
  openJobs,
  openSample,
  PHONE,
  pickTool,
  restingText,
  showPanel,
  spotOf,
  stage,
  test,
  undo,
  words,
} from './site.ts';

/** A free corner of the sample pad, on its lower edge. */
const FREE_CORNER = 'c24';

test('opens on the sample job with its figures, and every station has a ticket', async ({
  page,
}) => {
  await openSample(page);
  await expect(page.getByRole('button', { name: new RegExp(demoJob().name) })).toBeVisible();
  for (const place of ['ground', 'forms', 'steel', 'joints', 'mix', 'order'] as const) {
    await go(page, place);
    const ticket = page.getByRole('heading', { name: `${words.app.places[place]} ticket` });
    await expect(ticket).toBeVisible();
    await expect(page.locator('.figure-value').first()).toHaveText(/\d/);
  }
});

test('a figure opens to its working, with formula and source', async ({ page }) => {
  await openSample(page);
  await figure(page, 'net-area').click();
  const working = page.locator('details[open]').filter({ has: figure(page, 'net-area') });
  await expect(working).toContainText(words.app.ticket.formula);
  await expect(working).toContainText(words.app.ticket.source);
});

test('dragging a corner changes the net area while it moves, and undo brings it back', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  const area = figure(page, 'net-area');
  const before = await area.textContent();
  const job = demoJob();
  const from = await spotOf(page, job, cornerOf(job, FREE_CORNER));
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 20, from.y + 20, { steps: 4 });
  await expect(area).not.toHaveText(before ?? '');
  const during = await restingText(area);
  await page.mouse.move(from.x + 40, from.y + 40, { steps: 4 });
  await expect(area).not.toHaveText(during);
  await page.mouse.up();
  await expect(undo(page)).toBeEnabled();
  const after = await restingText(area);
  expect(after).not.toBe(before);
  await undo(page).click();
  await expect(area).toHaveText(before ?? '');
  await page.getByRole('button', { name: words.app.belt.redo, exact: true }).click();
  await expect(area).toHaveText(after);
});

test('a drag that is broken off with Escape changes nothing', async ({ page }) => {
  await openSample(page);
  await endWelcome(page);
  const area = figure(page, 'net-area');
  const before = await area.textContent();
  const job = demoJob();
  const from = await spotOf(page, job, cornerOf(job, FREE_CORNER));
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 30, from.y + 30, { steps: 4 });
  await expect(area).not.toHaveText(before ?? '');
  await page.keyboard.press('Escape');
  await expect(area).toHaveText(before ?? '');
  await page.mouse.up();
  await expect(area).toHaveText(before ?? '');
  await expect(undo(page)).toBeDisabled();
});

test.describe('with a finger', () => {
  test.use({ viewport: PHONE, hasTouch: true, isMobile: true });

  test('dragging a corner by touch changes the net area and undo brings it back', async ({
    page,
  }) => {
    await openSample(page);
    await endWelcome(page);
    const area = figure(page, 'net-area');
    const before = await area.textContent();
    const job = demoJob();
    const from = await spotOf(page, job, cornerOf(job, FREE_CORNER));
    // A finger moves only what was picked before: a swipe over the site looks aside.
    await page.touchscreen.tap(from.x, from.y);
    const browser = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x: number, y: number) =>
      browser.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y }],
      });
    await touch('touchStart', from.x, from.y);
    for (let step = 1; step <= 8; step += 1) {
      await touch('touchMove', from.x + 4 * step, from.y + 4 * step);
    }
    await expect(area).not.toHaveText(before ?? '');
    await touch('touchEnd', 0, 0);
    expect(await area.textContent()).not.toBe(before);
    await undo(page).click();
    await expect(area).toHaveText(before ?? '');
  });
});

test('a pad drawn by typed lengths and turns has the area that was typed', async ({ page }) => {
  await openSample(page);
  const jobs = await openJobs(page);
  await jobs.getByLabel(words.app.jobs.blank, { exact: true }).check();
  await jobs.getByRole('button', { name: words.app.jobs.make }).click();
  await pickTool(page, 'draw-pad');
  const bar = words.sketch.bar;
  await page.getByLabel(bar.across).fill("0'");
  await page.getByLabel(bar.up).fill("0'");
  await page.getByRole('button', { name: bar.placeCorner }).click();
  const edge = async (length: string, heading: string, degrees: string) => {
    await page.getByLabel(bar.length, { exact: true }).fill(length);
    await page.getByLabel(bar.headings).selectOption({ label: heading });
    await page.getByLabel(bar.angle).fill(degrees);
    await page.getByRole('button', { name: bar.addCorner }).click();
  };
  await edge(`12'-6"`, bar.heading.direction, '0');
  await edge('8-0', bar.heading.left, '90');
  await edge('150"', bar.heading.left, '90');
  await page.getByRole('button', { name: bar.close }).click();
  // 12.5 ft × 8 ft
  await expect(figure(page, 'net-area')).toHaveText(/^100(\.0+)? (sq )?ft/);
  await expect(figure(page, 'perimeter')).toHaveText(/41'-0"/);
});

test('a new length typed for a side moves the end that was chosen', async ({ page }) => {
  await openSample(page);
  await endWelcome(page);
  const job = demoJob();
  const spot = await spotOf(page, job, cornerOf(job, 'c22'));
  await page.mouse.click(spot.x, spot.y);
  const sketch = page.getByRole('region', { name: words.app.sketch.label });
  await sketch.getByRole('button', { name: /^Length of B–C/ }).click();
  await page.getByLabel(words.sketch.length.newLength).fill('2-0');
  await page.getByLabel(words.sketch.length.end('C')).check();
  await page.getByRole('button', { name: words.sketch.length.apply }).click();
  await showPanel(page, 'corners');
  const pad = page.getByRole('region', { name: 'New pad' });
  const edge = pad.getByRole('textbox', { name: words.sketch.table.cell.edge('B', 'C') });
  await expect(edge).toHaveValue(`2'-0"`);
  // The next side slid along with C, so the corner is as square as it was.
  const next = pad.getByRole('textbox', { name: words.sketch.table.cell.direction('C', 'D') });
  await expect(next).toHaveValue('0°');
});

test('from start to a changed edge by keyboard alone', async ({ page }) => {
  await openSample(page);
  const before = await figure(page, 'net-area').textContent();
  const press = async (key: string, until: () => Promise<boolean>) => {
    for (let tries = 0; tries < 200; tries += 1) {
      if (await until()) return;
      await page.keyboard.press(key);
    }
    throw new Error(`${key} did not lead there`);
  };
  const focusHas = (name: RegExp) => async () => {
    const focused = page.locator(':focus');
    if ((await focused.count()) === 0) return false;
    const label = await focused.getAttribute('aria-label');
    return name.test(label ?? (await focused.textContent()) ?? '');
  };
  const tabs = new RegExp(`^${words.app.panels.ticket}$`);
  await press('Tab', focusHas(tabs));
  await press('ArrowRight', focusHas(new RegExp(`^${words.app.panels.corners}$`)));
  const table = page.getByRole('region', { name: 'New pad' });
  await expect(table).toBeVisible();
  const cell = table.getByRole('textbox', { name: words.sketch.table.cell.up('C') });
  await press('Tab', async () => cell.evaluate((box) => box === document.activeElement));
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(`-2'`);
  await page.keyboard.press('Enter');
  await expect(cell).toHaveValue(`-2'-0"`);
  await press('Shift+Tab', focusHas(new RegExp(`^${words.app.panels.corners}$`)));
  await press('ArrowRight', focusHas(tabs));
  await expect(figure(page, 'net-area')).not.toHaveText(before ?? '');
});

test('what can’t be read as a length is told, and nothing is lost', async ({ page }) => {
  await openSample(page);
  await showPanel(page, 'corners');
  const table = page.getByRole('region', { name: 'New pad' });
  const cell = table.getByRole('textbox', { name: words.sketch.table.cell.up('C') });
  await cell.fill('about a yard');
  await cell.press('Enter');
  await expect(table.getByRole('alert')).toBeVisible();
  await expect(cell).toHaveValue('about a yard');
  await cell.press('Escape');
  await expect(cell).not.toHaveValue('about a yard');
});

test('switching units changes the words and not the sketch', async ({ page }) => {
  await openSample(page);
  const before = await figure(page, 'net-area').textContent();
  await page.getByRole('button', { name: words.app.head.settings }).click();
  await page.getByLabel(words.app.units.metric).check();
  await expect(figure(page, 'net-area')).toHaveText(/m²/);
  await page.getByLabel(words.app.units['feet-inches']).check();
  await expect(figure(page, 'net-area')).toHaveText(before ?? '');
});

test('an outline that crosses itself says so and withholds the figures', async ({ page }) => {
  await openSample(page);
  await showPanel(page, 'corners');
  const table = page.getByRole('region', { name: 'New pad' });
  const cell = table.getByRole('textbox', { name: words.sketch.table.cell.up('C') });
  // The third corner far above the pad: its two edges then cut through the others.
  await cell.fill(`20'`);
  await cell.press('Enter');
  await showPanel(page, 'ticket');
  await expect(page.getByRole('heading', { name: words.app.ticket.inTheWay })).toBeVisible();
  await expect(page.getByText(/cross/i).first()).toBeVisible();
  await expect(figure(page, 'net-area')).toHaveCount(0);
  await undo(page).click();
  await expect(figure(page, 'net-area')).toHaveText(/\d/);
});

test('the wheel looks closer, the whole site comes back', async ({ page }) => {
  await openSample(page);
  await endWelcome(page);
  const canvas = stage(page).locator('canvas').first();
  const whole = await canvas.screenshot();
  const box = await stage(page).boundingBox();
  if (!box) throw new Error('no stage');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.wheel(0, -400);
  await expect.poll(async () => whole.equals(await canvas.screenshot())).toBe(false);
  await page.mouse.move(box.x + 2, box.y + 2);
  await page.getByRole('button', { name: words.app.belt.fit }).click();
  await expect.poll(async () => whole.equals(await canvas.screenshot())).toBe(true);
});
