import type { Job } from '../../job/job.ts';
import { parseJob } from '../../job/parse.ts';
import { serializeJob } from '../../job/serialize.ts';
import { blankJob } from '../../job/start.ts';
import { fail, type Result } from '../../units/result.ts';
import { readBytes, written } from './letters.ts';
import { type LinkLetters, PACKING, readMark, writeMark } from './mark.ts';
import { packText, unpackText } from './packText.ts';

/**
 * What every program that handles addresses should carry, in characters (RFC 9110, section 4.1). Longer ones aren't made.
 * @source uri-length
 */
export const LINK_MOST = 8_000;
/** Above this some messengers split a message or cut it off: common practice, no source. */
export const LINK_EASY = 2_000;
/** No longer one is read: unpacked it could fill the memory. */
const READ_MOST = 100_000;

/** A part of a job, and how many characters of the link are there for it alone. */
export interface LinkPart {
  readonly part: keyof Job;
  readonly length: number;
}

export type JobLink =
  | {
      readonly is: 'link';
      readonly url: string;
      /** Short enough for any messenger: of `most` characters at most. */
      readonly easy: boolean;
      readonly most: number;
    }
  /** `parts`: what makes it long, the longest first. */
  | {
      readonly is: 'too-long';
      readonly length: number;
      readonly most: number;
      readonly parts: readonly LinkPart[];
    };

/**
 * The address that opens a copy of a job. All of the job stands behind its `#`, which no browser sends anywhere.
 * @param address Of the app itself; a fragment of its own is left out.
 * @param letters Digits, for a printed code; else the shorter letters.
 */
export function linkOf(job: Job, address: string, letters: LinkLetters = 'letters'): JobLink {
  const url = address.replace(/#.*$/s, '') + writeMark(letters, written(packed(job), letters));
  if (letters === 'letters' && url.length > LINK_MOST) {
    return { is: 'too-long', length: url.length, most: LINK_MOST, parts: partsOf(job) };
  }
  return { is: 'link', url, easy: url.length <= LINK_EASY, most: LINK_EASY };
}

/** The text of a job's file without its white space, packed. */
function packed(job: Job): Uint8Array {
  return packText(JSON.stringify(JSON.parse(serializeJob(job))));
}

/** How much shorter the link would be with a part of the job as in a blank one. */
function partsOf(job: Job): readonly LinkPart[] {
  const length = (one: Job) => written(packed(one), 'letters').length;
  const [whole, blank] = [length(job), blankJob()];
  return (Object.keys(blank) as readonly (keyof Job)[])
    .map((part) => ({ part, length: whole - length({ ...job, [part]: blank[part] }) }))
    .filter((one) => one.length > 0)
    .sort((a, b) => b.length - a.length);
}

/**
 * The job of a link's fragment (with its `#`), or why there is none: the checks are those of a job file. Never throws.
 * Null when the fragment holds no job at all.
 */
export function jobFromLink(fragment: string): Result<Job> | null {
  const mark = readMark(fragment);
  if (!mark) return null;
  const { packing, letters } = mark;
  if (packing > PACKING || packing < 1) {
    return fail({ code: 'link-newer', facts: { packing, known: PACKING } });
  }
  const { length } = mark.packed;
  if (length > READ_MOST) {
    return fail({ code: 'link-too-long', facts: { length, most: READ_MOST } });
  }
  const text = unpackText(readBytes(mark.packed, letters));
  return text.ok ? parseJob(text.value) : text;
}
