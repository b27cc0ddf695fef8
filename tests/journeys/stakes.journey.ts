import { demoJob } from '../../src/job/demo.ts';
import { formLineOf, placeOn } from '../../src/sketch/formLine.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT } from '../../src/units/grid.ts';
import { endWelcome, expect, figure, go, openSample, spotOf, test, undo, words } from './site.ts';

/** The lower edge of the sample pad, which the no-stake zone crosses. */
const RUN = 'R3';

test('a stake dragged into a no-stake zone is pinned there and says what it breaks; undo frees it', async ({
  page,
}) => {
  await openSample(page);
  await endWelcome(page);
  await go(page, 'forms');
  const job = demoJob();
  const stakes = formLineOf(job, takeoff(job))?.stakes.filter(({ run }) => run.mark === RUN) ?? [];
  const [, stake] = stakes;
  if (!stake) throw new Error('the run has stakes');
  const count = await figure(page, 'stakes').textContent();
  const from = await spotOf(page, job, stake.face);
  const to = await spotOf(page, job, placeOn(stake.run, stake.along - 1.2 * FOOT).face);
  const says = words.sketch.stakes;

  await page.mouse.click(from.x, from.y + 4);
  await expect(page.getByText(says.named.planned(RUN), { exact: true })).toBeVisible();
  await page.mouse.move(from.x, from.y + 4);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y + 4, { steps: 6 });
  const pinned = page.getByText(says.named.pinned(RUN), { exact: true });
  await expect(pinned).toBeVisible();
  const broken = page.getByText(/^Can’t be driven here/);
  await expect(broken).toBeVisible();
  await page.mouse.up();
  await expect(pinned).toBeVisible();
  await expect(broken).toBeVisible();
  await expect(page.getByRole('button', { name: says.free, exact: true })).toBeVisible();

  await undo(page).click();
  await expect(pinned).toBeHidden();
  await expect(figure(page, 'stakes')).toHaveText(count ?? '');
  await expect(undo(page)).toBeDisabled();
});
