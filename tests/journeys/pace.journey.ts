import { demoJob } from '../../src/job/demo.ts';
import { cornerOf, endWelcome, expect, figure, openSample, spotOf, test } from './site.ts';

// A report, not a limit: how fast this machine draws is not the project's doing.
test('the pace of frames while a corner is dragged', async ({ page }, info) => {
  await openSample(page);
  await endWelcome(page);
  const before = await figure(page, 'net-area').textContent();
  const job = demoJob();
  const from = await spotOf(page, job, cornerOf(job, 'c24'));
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const measured = page.evaluate(
    () =>
      new Promise<number[]>((resolve) => {
        const gaps: number[] = [];
        let last = performance.now();
        function frame(now: number) {
          gaps.push(now - last);
          last = now;
          if (gaps.length < 120) requestAnimationFrame(frame);
          else resolve(gaps);
        }
        requestAnimationFrame(frame);
      }),
  );
  for (let step = 0; step < 60; step += 1) {
    await page.mouse.move(from.x + 40 * Math.sin(step / 8), from.y + 30 * Math.sin(step / 5));
  }
  const gaps = (await measured).slice(1).toSorted((a, b) => a - b);
  await page.mouse.up();
  const at = (share: number) => gaps[Math.floor(share * (gaps.length - 1))]?.toFixed(1);
  const report = `frames while dragging: median ${at(0.5)} ms, 95 % under ${at(0.95)} ms, longest ${at(1)} ms`;
  console.log(report);
  info.annotations.push({ type: 'pace', description: report });
  await expect(figure(page, 'net-area')).not.toHaveText(before ?? '');
});
