import { endWelcome, expect, figure, go, openSample, showPanel, test, words } from './site.ts';

const says = words.app.order;
const practices = words.app.practices;

test('prices typed, the sum seen, hours typed, and a proposal with the price on the sheet', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  await go(page, 'order');
  await expect(figure(page, 'order-lines')).toContainText(/\d+ lines/);
  await expect(figure(page, 'order-money')).toBeHidden();

  await page.getByRole('heading', { name: says.parts.prices, exact: true }).click();
  const fields = page.getByRole('region', { name: says.parts.prices }).getByRole('textbox');
  await expect(fields.first()).toBeVisible();
  // A negative price is refused beside its field.
  await fields.first().fill('-4');
  await fields.first().press('Enter');
  await expect(page.getByText('less than nothing').first()).toBeVisible();
  const count = await fields.count();
  for (let i = 0; i < count; i++) {
    await fields.nth(i).fill(`${i + 2}.50`);
    await fields.nth(i).press('Enter');
  }
  await expect(figure(page, 'order-money')).toContainText(/^\$\d+\.\d\d$/);
  await expect(figure(page, 'order-unpriced')).toBeHidden();
  await expect(figure(page, 'bid-price')).toBeHidden();

  await page.getByRole('heading', { name: says.parts.hours, exact: true }).click();
  const hours = page.getByRole('region', { name: says.parts.hours });
  for (const task of ['forms', 'steel', 'place', 'finish', 'strip'] as const) {
    const field = hours.getByLabel(says.hours.typed(words.sheet.terms[`task-${task}`]));
    await field.fill('3');
    await field.press('Enter');
  }
  await expect(figure(page, 'bid-price')).toContainText('$');

  await showPanel(page, 'practices');
  await page.getByRole('heading', { name: practices.groups.bid, exact: true }).click();
  await page.getByLabel(practices.fields.profit.label, { exact: true }).fill('25');
  await page.getByLabel(practices.fields.profit.label, { exact: true }).press('Enter');
  await showPanel(page, 'ticket');
  await expect(figure(page, 'bid-profit')).not.toHaveText('$0.00');

  await go(page, 'sheet');
  const { pageKinds } = words.app.sheet;
  await page.getByLabel(pageKinds.proposal, { exact: true }).check();
  // The only money that is left is the customer's price.
  for (const kind of ['load', 'order', 'forms'] as const) {
    await page.getByLabel(pageKinds[kind], { exact: true }).uncheck();
  }
  const money = page.locator('.sheet-view').getByText(/^\$\d/);
  await expect(money).toHaveText(/^\$\d+\.00$/, { timeout: 20_000 });
});
