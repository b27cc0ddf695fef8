import type { Page } from '@playwright/test';
import type { Point } from '../../src/geometry/point.ts';
import { demoJob } from '../../src/job/demo.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import type { Spot } from '../../src/sketch/view.ts';
import { hugeJob } from '../bench/jobs.ts';
import {
  cornerOf,
  endWelcome,
  expect,
  figure,
  openJobs,
  openSample,
  spotOf,
  test,
  words,
} from './site.ts';

/** Gaps between frames and tasks longer than 50 ms, while a corner is dragged about. */
interface Pace {
  readonly gaps: readonly number[];
  readonly longTasks: readonly number[];
}

/** What follows a start (the offline copy, the first drawing) isn't part of a drag. */
const STARTED_MS = 1500;

async function drag(page: Page, from: Spot, reach: Point): Promise<Pace> {
  await page.waitForTimeout(STARTED_MS);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const measured = page.evaluate(
    () =>
      new Promise<{ gaps: number[]; longTasks: number[] }>((resolve) => {
        const gaps: number[] = [];
        const longTasks: number[] = [];
        const watch = new PerformanceObserver((list) => {
          for (const { duration } of list.getEntries()) longTasks.push(duration);
        });
        watch.observe({ type: 'longtask' });
        let last = performance.now();
        function frame(now: number) {
          gaps.push(now - last);
          last = now;
          if (gaps.length < 120) requestAnimationFrame(frame);
          else {
            watch.disconnect();
            resolve({ gaps, longTasks });
          }
        }
        requestAnimationFrame(frame);
      }),
  );
  for (let step = 0; step < 60; step += 1) {
    await page.mouse.move(
      from.x + reach.x * Math.sin(step / 8),
      from.y + reach.y * Math.sin(step / 5),
    );
    // About as often as a mouse tells where it is.
    await page.waitForTimeout(12);
  }
  return measured;
}

function tell({ gaps, longTasks }: Pace, what: string): string {
  const sorted = gaps.slice(1).toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]?.toFixed(1);
  const longest = longTasks.length > 0 ? `${Math.max(...longTasks).toFixed(0)} ms` : 'under 50 ms';
  return [
    `${what}: frames median ${at(0.5)} ms`,
    `95 % under ${at(0.95)} ms`,
    `longest ${at(1)} ms`,
    `longest task ${longest}`,
  ].join(', ');
}

// One at a time: they would slow each other down.
test.describe.configure({ mode: 'default' });

// Reports, not limits: how fast this machine draws is not the project's doing.
test('the pace of frames while a corner is dragged', async ({ page }, info) => {
  await openSample(page);
  await endWelcome(page);
  const before = await figure(page, 'net-area').textContent();
  const job = demoJob();
  const from = await spotOf(page, job, cornerOf(job, 'c24'));
  const report = tell(await drag(page, from, { x: 40, y: 30 }), 'sample job');
  await page.mouse.up();
  console.log(report);
  info.annotations.push({ type: 'pace', description: report });
  await expect(figure(page, 'net-area')).not.toHaveText(before ?? '');
});

test('the pace of frames while a corner of the huge job is dragged', async ({ page }, info) => {
  await openSample(page);
  await endWelcome(page);
  const job = hugeJob();
  const jobs = await openJobs(page);
  await jobs.getByLabel(words.app.jobs.importFile).setInputFiles({
    name: 'huge.json',
    mimeType: 'application/json',
    buffer: Buffer.from(serializeJob(job)),
  });
  await expect(jobs).toBeHidden();
  // The figures come from the worker; until they do, the ticket has none.
  await expect(figure(page, 'net-area')).toHaveText(/\d/);
  const before = await figure(page, 'net-area').textContent();
  const from = await spotOf(page, job, cornerOf(job, 'pad-1'));
  const report = tell(await drag(page, from, { x: 30, y: 25 }), 'huge job');
  await page.mouse.up();
  console.log(report);
  info.annotations.push({ type: 'pace', description: report });
  await expect(figure(page, 'net-area')).not.toHaveText(before ?? '');
  await expect(page.getByText(words.app.ticket.behind)).toBeHidden();
});
