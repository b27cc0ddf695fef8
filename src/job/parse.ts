import { fail, ok, type Problem, type Result } from '../units/result.ts';
import { fieldProblems, seenAs } from './fields.ts';
import type { Job } from './job.ts';
import { migrated } from './migrate.ts';
import { FORMAT, jobSchemaParts, VERSION } from './schema.ts';
import { wholenessProblems } from './wholeness.ts';

/** A job of thousands of corners takes a tenth of this, in characters. */
const BIGGEST = 5_000_000;
/** In a file beyond this the first broken field is told alone, so that a hostile one can't fill the memory. */
const LISTED_IN_FULL = 500_000;
/** More problems than this help nobody. */
const MOST_PROBLEMS = 40;

/**
 * Reads the text of a job file: the one door through which foreign data comes in. What isn't a whole and sound job is
 * refused with a list of what is wrong, each with its place in the file and what was seen. Nothing is repaired, nothing
 * guessed. Never throws, whatever the text.
 */
export function parseJob(text: string): Result<Job> {
  if (text.trim() === '') return fail({ code: 'file-empty' });
  if (text.length > BIGGEST) return fail({ code: 'file-too-big', facts: { most: BIGGEST } });
  const read = readJson(text);
  if (!read.ok) return read;
  const file = read.value;
  if (!isObject(file) || Reflect.get(file, 'format') !== FORMAT) {
    return fail({ code: 'file-not-ours' });
  }
  const version: unknown = Reflect.get(file, 'version');
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    return fail({ code: 'file-version', where: 'version', facts: { seen: seenAs(version) } });
  }
  if (version > VERSION) {
    return fail({ code: 'file-newer', where: 'version', facts: { version, known: VERSION } });
  }
  const strangers = Object.keys(file)
    .filter((key) => !['format', 'version', 'job'].includes(key))
    .map((key): Problem => ({ code: 'field-unknown', where: key }));
  if (!Object.hasOwn(file, 'job')) strangers.push({ code: 'field-missing', where: 'job' });
  if (strangers.length > 0) return refused(strangers);

  const data = migrated(Reflect.get(file, 'job'), version);
  const fields = fieldProblems(jobSchemaParts, data, 'job', text.length <= LISTED_IN_FULL);
  if (fields.length > 0) return refused(fields);
  const job = data as Job;
  const whole = wholenessProblems(job);
  return whole.length > 0 ? refused(whole) : ok(job);
}

function readJson(text: string): Result<unknown> {
  try {
    // A byte order mark is put in front by some programs and means nothing.
    return ok(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch (error) {
    const says = error instanceof Error ? error.message : String(error);
    return fail({ code: 'file-not-json', facts: { says } });
  }
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refused(problems: readonly Problem[]): Result<Job> {
  if (problems.length <= MOST_PROBLEMS) return fail(...problems);
  const left = { code: 'file-more-problems', facts: { count: problems.length - MOST_PROBLEMS } };
  return fail(...problems.slice(0, MOST_PROBLEMS), left);
}
