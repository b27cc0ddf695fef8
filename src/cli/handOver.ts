import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Job } from '../job/job.ts';
import { jobTables } from '../sheet/csv/jobTables.ts';
import { filled } from '../sheet/words/filled.ts';
import type { Words } from '../sheet/words/words.ts';
import { linkOf } from '../storage/link/jobLink.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { whyNot } from './whyNot.ts';

/** What goes to standard output, and why it isn't all of what was asked for. */
interface HandedOver {
  readonly out: string;
  readonly why?: string;
}

/** The link that opens a copy of the job. */
export function jobLinkLine({ cli }: Words, job: Job, address: string): HandedOver {
  const link = linkOf(job, address);
  if (link.is === 'link') return { out: `${link.url}\n` };
  const { length, most } = link;
  return { out: '', why: filled(cli.linkTooLong, { length: `${length}`, most: `${most}` }) };
}

/** Every table as a CSV file in a folder, which is made when it isn't there; the paths of those written. */
export function tablesWritten(
  words: Words,
  job: Job,
  takeoff: Takeoff,
  folder: string,
): HandedOver {
  let out = '';
  let path = folder;
  try {
    mkdirSync(folder, { recursive: true });
    for (const { fileName, text } of jobTables(words, job, takeoff)) {
      path = join(folder, fileName);
      writeFileSync(path, text);
      out += `${path}\n`;
    }
    return { out };
  } catch (error) {
    return { out, why: filled(words.cli.cantWrite, { file: path, why: whyNot(words, error) }) };
  }
}
