import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { parseJob } from '../../../src/job/parse.ts';
import { blankJob } from '../../../src/job/start.ts';
import {
  type JobLink,
  jobFromLink,
  LINK_EASY,
  LINK_MOST,
  linkOf,
} from '../../../src/storage/link/jobLink.ts';
import { written } from '../../../src/storage/link/letters.ts';
import { writeMark } from '../../../src/storage/link/mark.ts';
import { packText } from '../../../src/storage/link/packText.ts';
import { chance } from '../../random/chance.ts';
import { reference } from '../../references/references.ts';

const ADDRESS = 'https://pads.example/yard/';
const FILES = join(import.meta.dirname, '../../files');

function urlOf(link: JobLink): string {
  if (link.is !== 'link') throw new Error(`too long: ${link.length}`);
  return link.url;
}

function fragmentOf(url: string): string {
  return url.slice(url.indexOf('#'));
}

function codesOf(fragment: string): readonly string[] {
  const read = jobFromLink(fragment);
  return read === null ? ['no job'] : read.ok ? ['ok'] : read.problems.map(({ code }) => code);
}

/** A text as a link would carry it, whatever it says. */
function packedAs(text: string): string {
  return writeMark('letters', written(packText(text), 'letters'));
}

/** A job whose names nobody could have foreseen. */
function longJob(letters: number): Job {
  const { whole } = chance(5);
  const notes = Array.from({ length: letters }, () => String.fromCodePoint(whole(0x4e00, 0x9fff)));
  return { ...demoJob(), notes: notes.join('') };
}

describe('there and back', () => {
  const jobs: readonly (readonly [string, Job])[] = [
    ['the sample job', demoJob()],
    ['a blank job', blankJob()],
    [
      'any letters',
      { ...demoJob(), name: 'Losa de la Señora Núñez 🧱', site: 'شارع ٥ "</script>' },
    ],
    ['a long one', longJob(1_500)],
  ];
  test.each(jobs)('%s, in letters and in digits', (_, job) => {
    for (const letters of ['letters', 'digits'] as const) {
      const url = urlOf(linkOf(job, ADDRESS, letters));
      expect(url.startsWith(`${ADDRESS}#job1`)).toBe(true);
      expect(jobFromLink(fragmentOf(url))).toEqual({ ok: true, value: job });
    }
  });

  test('an address takes it as it is: no sign that a browser or a messenger writes otherwise', () => {
    for (const letters of ['letters', 'digits'] as const) {
      const url = urlOf(linkOf(demoJob(), `${ADDRESS}?a=b#old`, letters));
      expect(new URL(url).href).toBe(url);
      expect(url).toMatch(/^https:\/\/pads\.example\/yard\/\?a=b#job1[.:][\w-]+$/);
    }
  });

  test('what a message writes behind a link is not of it', () => {
    const fragment = fragmentOf(urlOf(linkOf(demoJob(), ADDRESS)));
    for (const behind of ['.', ')', '>', ' Let me know', '%20', '\n']) {
      expect(codesOf(fragment + behind), behind).toEqual(['ok']);
    }
  });

  test('a link that was sent long ago opens, its job brought forward as a file would be', () => {
    const sent = readFileSync(join(FILES, 'link-1-v2-sample.txt'), 'utf8');
    expect(jobFromLink(sent)).toEqual(
      parseJob(readFileSync(join(FILES, 'v2-sample.json'), 'utf8')),
    );
  });
});

describe('what is no good link', () => {
  const good = fragmentOf(urlOf(linkOf(demoJob(), ADDRESS)));

  test.each(['', '#', '#top', '#job', '#jobs1.abc', '#job1', 'job1.abc'])('%j: not ours', (one) => {
    expect(jobFromLink(one)).toBeNull();
  });

  test('cut off anywhere: said as such, and never another job', () => {
    for (let end = '#job1.'.length; end < good.length; end++) {
      expect(['link-cut-short', 'link-broken']).toContain(codesOf(good.slice(0, end))[0]);
    }
    for (const share of [0.1, 0.5, 0.9]) {
      const cut = good.slice(0, Math.floor(good.length * share));
      expect(codesOf(cut)).toEqual(['link-cut-short']);
      // As messengers show what they leave out.
      expect(codesOf(`${cut}…`)).toEqual(['link-cut-short']);
    }
  });

  test('any one sign changed: never another job', () => {
    const { whole } = chance(11);
    for (let at = '#job1.'.length; at < good.length; at++) {
      const sign = 'ABCXYZabcxyz0189-_'[whole(0, 17)]!;
      const changed = good.slice(0, at) + sign + good.slice(at + 1);
      if (changed === good) continue;
      const read = jobFromLink(changed);
      // The last sign has bits to spare, which say nothing.
      if (read?.ok) expect(read.value).toEqual(demoJob());
      else expect(['link-broken', 'link-cut-short']).toContain(read?.problems[0]?.code);
    }
  });

  test('random signs, in letters and in digits', () => {
    const { whole } = chance(3);
    for (let round = 0; round < 300; round++) {
      const length = whole(0, 400);
      const digits = Array.from({ length }, () => whole(0, 9)).join('');
      const letters = Buffer.from(digits).toString('base64url');
      for (const one of [`#job1.${letters}`, `#job1:${digits}`]) {
        expect(['link-broken', 'link-cut-short']).toContain(codesOf(one)[0]);
      }
    }
  });

  test('of a newer packing, or of none', () => {
    expect(codesOf('#job2.abc')).toEqual(['link-newer']);
    expect(codesOf('#job0.abc')).toEqual(['link-newer']);
  });

  test('too long to be read, and one that would unpack to more than it says', () => {
    expect(codesOf(`#job1.${'A'.repeat(100_001)}`)).toEqual(['link-too-long']);
    const bomb = deflateRawSync(Buffer.alloc(60_000_000), { level: 9 });
    const whole = Buffer.concat([Buffer.from([0, 0, 9, 1, 2, 3, 4]), bomb]);
    expect(codesOf(`#job1.${whole.toString('base64url')}`)).toEqual(['link-broken']);
  });

  test.each([
    ['not JSON', '{"format": ', ['file-not-json']],
    ['another file', '{"flour": 500}', ['file-not-ours']],
    ['a newer job', '{"format":"notchpad-job","version":999,"job":{}}', ['file-newer']],
    ['nothing', '', ['file-empty']],
  ])('whole, but %s inside: refused as a file would be', (_, text, codes) => {
    expect(codesOf(packedAs(text))).toEqual(codes);
  });

  test('whole, but with an unsound job inside', () => {
    const { features, ...job } = demoJob();
    const folded = JSON.stringify({
      format: 'notchpad-job',
      version: 3,
      job: { ...job, features: [...features, features[0]] },
    });
    expect(codesOf(packedAs(folded))).toEqual(parseCodes(folded));
    expect(codesOf(packedAs(folded))).toContain('field-id-twice');
  });
});

function parseCodes(text: string): readonly string[] {
  const read = parseJob(text);
  return read.ok ? ['ok'] : read.problems.map(({ code }) => code);
}

describe('length', () => {
  test('the bound is the published one', () => {
    expect(reference('uri-length').says).toContain('8,000');
    expect(LINK_MOST).toBe(8_000);
  });

  test('the sample job goes easily', () => {
    const link = linkOf(demoJob(), ADDRESS);
    expect(link).toMatchObject({ is: 'link', easy: true });
    expect(urlOf(link).length).toBeLessThan(LINK_EASY);
  });

  test('one that some messengers would cut is told from one that none does', () => {
    expect(linkOf(longJob(1_000), ADDRESS)).toMatchObject({ is: 'link', easy: false });
  });

  test('one that is too long is not made: how long, and what makes it so', () => {
    const link = linkOf(longJob(6_000), ADDRESS);
    if (link.is !== 'too-long') throw new Error('6,000 letters at random fit in no link.');
    expect(link.length).toBeGreaterThan(LINK_MOST);
    const [first, second] = link.parts;
    expect(first?.part).toBe('notes');
    expect(second?.part).toBe('features');
    // Random letters can't be packed: 14 bits and more of each.
    expect(first!.length).toBeGreaterThan((6_000 * 14) / 6);
    expect(first!.length).toBeLessThan(link.length);
  });
});
