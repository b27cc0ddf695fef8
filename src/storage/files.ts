import type { Job } from '../job/job.ts';
import { parseJob } from '../job/parse.ts';
import { serializeJob } from '../job/serialize.ts';
import type { Result } from '../units/result.ts';

/** The text of a job's file, for saving to the device or sending on. */
export function jobToText(job: Job): string {
  return serializeJob(job);
}

/** A job from the text of a file, or the list of what is wrong with it. Never throws. */
export function jobFromText(text: string): Result<Job> {
  return parseJob(text);
}

/** Names that one system or another keeps for itself. */
const TAKEN = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/**
 * A name for a file that every system takes: the job's name with letters and digits of any language, the rest as
 * dashes, at most 60 characters.
 */
export function fileNameOf(job: Pick<Job, 'name'>, ending: string): string {
  const plain = [...job.name.normalize('NFC').replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')]
    .slice(0, 60)
    .join('')
    .replace(/^-+|-+$/g, '');
  const name = plain === '' || TAKEN.test(plain) ? `job${plain ? `-${plain}` : ''}` : plain;
  return `${name}.${ending}`;
}
