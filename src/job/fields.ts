import * as v from 'valibot';
import type { Problem } from '../units/result.ts';
import type { JobProblemCode } from './problems.ts';

/**
 * What is wrong with foreign data, field by field, against a schema: each with its path (from `at` on), what was seen
 * and what belongs there. Empty when nothing is. Nothing is changed.
 */
export function fieldProblems(
  schema: v.GenericSchema,
  value: unknown,
  at: string,
  all = true,
): Problem[] {
  const parsed = v.safeParse(schema, value, { abortEarly: !all });
  if (!parsed.success) return parsed.issues.map((issue) => problemOf(issue, at));
  return unknownFields(value, parsed.output, at);
}

function problemOf(issue: v.BaseIssue<unknown>, at: string): Problem {
  const where = pathOf(issue, at);
  const say = (code: JobProblemCode, facts?: Problem['facts']): Problem => ({
    code,
    where,
    ...(facts ? { facts } : {}),
  });
  const seen = seenAs(issue.input);
  const bound = 'requirement' in issue ? issue.requirement : undefined;
  switch (issue.type) {
    case 'strict_object':
      if (issue.expected === 'never') return say('field-unknown');
      return issue.input === undefined
        ? say('field-missing')
        : say('field-type', { seen, expected: 'object' });
    case 'integer':
      return say('field-type', { seen, expected: 'whole-number' });
    case 'finite':
      return say('field-type', { seen, expected: 'number' });
    case 'min_value':
      return say('field-range', { seen, least: Number(bound) });
    case 'gt_value':
      return say('size-not-positive', { seen });
    case 'max_value':
      return say('field-range', { seen, most: Number(bound) });
    case 'max_length':
      return say('field-long', { most: Number(bound) });
    case 'min_length':
      return say('field-none');
    case 'regex':
      return say('field-id', { seen });
    case 'picklist':
    case 'literal':
    case 'variant':
      return issue.input === undefined
        ? say('field-missing')
        : say('field-choice', { seen, choices: (issue.expected ?? '').replace(/^\(|\)$/g, '') });
    default: {
      if (issue.input === undefined) return say('field-missing');
      return say('field-type', { seen, expected: EXPECTED[issue.type] ?? 'object' });
    }
  }
}

const EXPECTED: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'number',
  boolean: 'true-false',
  array: 'list',
};

/** `job.features[2].shape`. */
function pathOf(issue: v.BaseIssue<unknown>, at: string): string {
  return (issue.path ?? []).reduce((path, { key }) => join(path, key), at);
}

function join(path: string, key: unknown): string {
  if (typeof key === 'number') return `${path}[${key}]`;
  return path === '' ? String(key) : `${path}.${String(key)}`;
}

/** What stands in the file, short enough to be quoted. Lists and objects aren't looked into: they may be bottomless. */
export function seenAs(input: unknown): string {
  if (typeof input === 'object' && input !== null) return Array.isArray(input) ? '[…]' : '{…}';
  const text = typeof input === 'string' ? JSON.stringify(input) : String(input);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/**
 * Fields that the schema didn't take over. Strict objects refuse unknown names themselves, all but those that every
 * object has from birth (`__proto__`, `constructor`…).
 */
function unknownFields(value: unknown, taken: unknown, at: string): Problem[] {
  if (typeof value !== 'object' || value === null) return [];
  if (typeof taken !== 'object' || taken === null) return [];
  return Object.keys(value).flatMap((key) => {
    const path = join(at, Array.isArray(value) ? Number(key) : key);
    if (!Object.hasOwn(taken, key)) return [{ code: 'field-unknown', where: path }];
    return unknownFields(Reflect.get(value, key), Reflect.get(taken, key), path);
  });
}
