import { endWelcome, expect, figure, go, openSample, showPanel, test, words } from './site.ts';

const says = words.app.practices;
const pour = words.sheet.layout.pour;

test('a blend of 2 to 1 1/2 by half bags, its water, ground readings, and the batches on the sheet', async ({
  page,
}) => {
  const type = async (label: string, text: string, at = 0) => {
    const field = page.getByLabel(label, { exact: true }).nth(at);
    await field.fill(text);
    await field.press('Enter');
  };
  await openSample(page);
  await endWelcome(page);
  await go(page, 'mix');
  await showPanel(page, 'practices');
  await type(says.fields.mainParts.label, '2');
  await type(says.fields.otherParts.label, '1 1/2');
  await type(says.fields.batchVolume.label, '1.8');

  // Whole bags of these parts are more than the mixer holds: said, with what would mend it, and nothing counted.
  await showPanel(page, 'ticket');
  await expect(page.getByText(/Allow half bags, choose parts that fit/)).toBeVisible();
  await expect(figure(page, 'batches')).toHaveCount(0);

  await showPanel(page, 'practices');
  await page.getByLabel(says.fields.halfBags.label, { exact: true }).check();
  // A third of a part isn't taken, and stays to be mended.
  await type(says.fields.otherParts.label, '1/3');
  await expect(page.getByText(says.mix.quarters)).toBeVisible();
  await type(says.fields.otherParts.label, '1 1/2');
  for (const [at, least, most] of [
    [0, '3', '4'],
    [1, '2', '2.5'],
  ] as const) {
    await type(says.mix.water.most, most, at);
    await type(says.mix.water.least, least, at);
  }
  await showPanel(page, 'ticket');
  await expect(figure(page, 'batch-full')).toHaveText('3.5 bags');
  await expect(figure(page, 'batches')).toContainText(/\d+ batches/);
  const bags = await figure(page, 'bags').textContent();

  const ground = words.app.ground;
  await page.getByText(ground.title, { exact: true }).click();
  for (const depth of ['4.25', '4.5', '4.25', '4.5', '4.25']) {
    await type(ground.add, depth);
  }
  await page.getByLabel(ground.depthBy).selectOption('readings');
  await expect(figure(page, 'ground-depth')).toHaveText('4 3/8"');
  await expect(figure(page, 'bags')).not.toHaveText(bags ?? '');

  await go(page, 'sheet');
  await expect(page.getByText(pour.tick).first()).toBeAttached();
  await expect(page.getByText('1 1/2', { exact: true }).nth(10)).toBeAttached();
  await expect(page.getByText('11.75 qt', { exact: true }).nth(10)).toBeAttached();
  await expect(page.getByText(pour.checkpoints, { exact: true }).first()).toBeAttached();
});
