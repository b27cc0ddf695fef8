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
  if (parsed.success) return [];
  // The first problem of each place: a number that is none is out of bounds as well.
  const first = new Map<string | undefined, Problem>();
  for (const issue of parsed.issues) {
    const problem = problemOf(issue, at);
    if (!first.has(problem.where)) first.set(problem.where, problem);
  }
  return [...first.values()];
}

function problemOf(issue: v.BaseIssue<unknown>, at: string): Problem {
  // A list has none of an object's fields; say so of the list, once.
  const list = issue.type === 'strict_object' && Array.isArray(issue.path?.at(-1)?.input);
  const where = pathOf(list ? issue.path?.slice(0, -1) : issue.path, at);
  const say = (code: JobProblemCode, facts?: Problem['facts']): Problem => ({
    code,
    where,
    ...(facts ? { facts } : {}),
  });
  const seen = seenAs(issue.input);
  const bound = 'requirement' in issue ? issue.requirement : undefined;
  switch (issue.type) {
    case 'strict_object':
      if (list) return say('field-type', { seen: '[…]', expected: 'object' });
      if (issue.expected === 'never') return say('field-unknown');
      return issue.input === undefined
        ? say('field-missing')
        : say('field-type', { seen, expected: 'object' });
    case 'integer':
      return say('field-type', { seen, expected: 'whole-number' });
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
function pathOf(path: readonly v.IssuePathItem[] | undefined, at: string): string {
  return (path ?? []).reduce((before, { key }) => join(before, key), at);
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
