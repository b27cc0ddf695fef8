import type { Problem } from '../units/result.ts';
import { fieldProblems } from './fields.ts';
import type { Lumber } from './job.ts';
import type { JobProblemCode } from './problems.ts';
import { lumberSchema } from './schema.ts';

/** What is wrong with lists of boards, row by row. `where` is the place in them: `truck[0].length`. */
export function lumberProblems(lumber: Lumber): readonly Problem[] {
  const fields = fieldProblems(lumberSchema, lumber, '').map(inWordsOfBoards);
  return fields.length > 0 ? fields : stockIdProblems(lumber, '');
}

/** Ids that stand for two rows. `at` stands before each place. */
export function stockIdProblems(
  { truck, yard }: Record<'truck' | 'yard', readonly { readonly id: string }[]>,
  at: string,
): readonly Problem[] {
  const seen = new Set<string>();
  const problems: Problem[] = [];
  const note = (list: string) => (row: { readonly id: string }, index: number) => {
    const { id } = row;
    if (seen.has(id)) {
      problems.push({ code: 'field-id-twice', where: `${at}${list}[${index}].id`, facts: { id } });
    }
    seen.add(id);
  };
  truck.forEach(note('truck'));
  yard.forEach(note('yard'));
  return problems;
}

/** A number that is out of bounds is said as what it is of: grid units mean nothing to a carpenter. */
function inWordsOfBoards(problem: Problem): Problem {
  if (problem.code !== 'field-range') return problem;
  const code = rangeCode(problem);
  return code ? { ...problem, code } : problem;
}

function rangeCode({ where = '', facts = {} }: Problem): JobProblemCode | null {
  if (where.endsWith('.length')) return 'least' in facts ? 'board-too-short' : 'board-too-long';
  if (where.endsWith('.count')) return 'board-count';
  return where.endsWith('.price') ? 'board-price' : null;
}
