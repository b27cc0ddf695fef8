/** `npm run takeoff -- <job.json>`: the takeoff of a job file, its tables or a link to it, without a browser. */
import { readFileSync } from 'node:fs';
import type { Job } from '../job/job.ts';
import { parseJob } from '../job/parse.ts';
import { filled, sayNote, sayProblem } from '../sheet/words/say.ts';
import type { Words } from '../sheet/words/words.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { takeoff } from '../takeoff/takeoff.ts';
import { EXIT, type Exit } from './exits.ts';
import { jobLinkLine, tablesWritten } from './handOver.ts';
import { readTakeoffGiven } from './takeoffGiven.ts';
import { takeoffJson } from './takeoffJson.ts';
import { ticketText } from './ticketText.ts';
import { whyNot } from './whyNot.ts';

// Whoever reads may have seen enough (`| head`).
process.stdout.on('error', (error) => {
  if (Reflect.get(error, 'code') !== 'EPIPE') throw error;
});
process.exitCode = await run(process.argv.slice(2));

async function run(given: readonly string[]): Promise<Exit> {
  const { words, asks: asked } = readTakeoffGiven(given);
  if (asked.is === 'help') {
    process.stdout.write(`${words.cli.takeoffUsage}\n`);
    return EXIT.done;
  }
  if (asked.is === 'wrong') return wrongUse(words, asked.why);
  const { file } = asked;
  const name = file === '-' ? words.cli.standardInput : file;
  let text: string;
  try {
    text = readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    say([filled(words.cli.cantRead, { file: name, why: whyNot(words, error) })]);
    return EXIT.refused;
  }
  const read = parseJob(text);
  if (!read.ok) {
    const problems = read.problems.map((problem) => `  ${sayProblem(words, problem)}`);
    say([filled(words.cli.refused, { file: name }), ...problems]);
    return EXIT.refused;
  }
  const job = read.value;
  const result = await searchedTakeoff(words, job, asked.seconds);
  const { csv, link } = asked;
  if (csv !== undefined || link !== undefined) {
    const outs = [
      ...(link === undefined ? [] : [jobLinkLine(words, job, link)]),
      ...(csv === undefined ? [] : [tablesWritten(words, job, result, csv)]),
    ];
    process.stdout.write(outs.map(({ out }) => out).join(''));
    const whys = outs.flatMap(({ why }) => (why === undefined ? [] : [why]));
    if (whys.length > 0) {
      say(whys);
      return EXIT.refused;
    }
  } else {
    process.stdout.write(
      asked.text
        ? ticketText(words, job, result, asked.workings)
        : `${JSON.stringify(takeoffJson(words, job, result), null, 2)}\n`,
    );
  }
  const stops = result.notes.filter(({ weight }) => weight === 'stop');
  if (stops.length === 0) return EXIT.done;
  say([words.cli.withheld, ...stops.map((note) => `  ${sayNote(words, note, job.units)}`)]);
  return EXIT.withheld;
}

/** A search that fails leaves the first answers standing, and says so. */
async function searchedTakeoff(words: Words, job: Job, seconds: number): Promise<Takeoff> {
  const first = takeoff(job);
  if (seconds === 0) return first;
  try {
    const { search } = await import('./search.ts');
    const searched = await search(first, seconds);
    return Object.keys(searched).length > 0 ? takeoff(job, searched) : first;
  } catch (error) {
    say([filled(words.cli.searchFailed, { why: whyNot(words, error) })]);
    return first;
  }
}

function wrongUse({ cli }: Words, why: string): Exit {
  say([why, cli.takeoffUsage]);
  return EXIT.usage;
}

function say(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
}
