import { endWelcome, expect, figure, go, openSample, showPanel, test, words } from './site.ts';

const { weather } = words.app;

test('weather is typed in: what it does to the set, how fast the surface dries; what can’t be is refused', async ({
  page,
}) => {
  const type = async (label: string, text: string) => {
    const field = page.getByLabel(label, { exact: true });
    await field.fill(text);
    await field.press('Enter');
  };
  await openSample(page);
  await endWelcome(page);
  await go(page, 'mix');
  await expect(figure(page, 'placing-time')).toBeVisible();
  const sets = await figure(page, 'first-set').textContent();

  await showPanel(page, 'practices');
  await type(weather.fields.humidity, '130');
  await expect(page.getByText(/100/).filter({ hasText: '0' }).first()).toBeVisible();
  await type(weather.fields.humidity, '30');
  await type(weather.fields.air, '95');
  await type(weather.fields.concrete, '90');
  await type(weather.fields.wind, '12');

  await showPanel(page, 'ticket');
  await expect(figure(page, 'evaporation')).toBeVisible();
  await expect(figure(page, 'first-set')).not.toHaveText(sets ?? '');
});
