import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { paintPdf } from '../../src/sheet/paintPdf.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { fonts, sheetOf } from '../sheet/made.ts';
import { typicalJob } from './jobs.ts';

const TURNS = 9;

async function middle(call: () => unknown): Promise<number> {
  const times: number[] = [];
  for (let turn = 0; turn < TURNS; turn++) {
    const start = performance.now();
    await call();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[Math.floor(TURNS / 2)]!;
}

async function measureOne(name: string, job: Job): Promise<void> {
  const pages = sheetOf(job);
  const made = () => paintPdf(pages, { fonts, title: name, date: new Date(0) });
  const bytes = await made();
  const base = await middle(() => takeoff(job));
  const laid = await middle(() => sheetOf(job));
  const painted = await middle(made);
  console.log(
    `  ${name.padEnd(8)} ${pages.length} pages, ${Math.round(bytes.length / 1000)} kB   laid out ${laid.toFixed(0)} ms = ${(laid / base).toFixed(1)} x the takeoff   PDF ${painted.toFixed(0)} ms = ${(painted / base).toFixed(1)} x`,
  );
}

/** The whole sheet from job to PDF, against the takeoff alone. */
export async function measureSheet(): Promise<void> {
  console.log('The crew sheet, laid out (with its takeoff) and written as a PDF:');
  await measureOne('sample', demoJob());
  await measureOne('typical', typicalJob());
}
