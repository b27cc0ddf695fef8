import type { Problem } from '../units/result.ts';
import type { StorageProblemCode } from './problems.ts';

/** What storage throws: an error that carries a problem for the language files. */
export interface StorageTrouble extends Error {
  readonly problem: Problem;
}

export function trouble(
  code: StorageProblemCode,
  more: Omit<Problem, 'code'> = {},
): StorageTrouble {
  return Object.assign(new Error(code), { problem: { code, ...more } });
}

export function isStorageTrouble(error: unknown): error is StorageTrouble {
  return error instanceof Error && 'problem' in error;
}

/** What the browser threw, as trouble of ours: no room, or no store. */
export function asTrouble(error: unknown): StorageTrouble {
  if (isStorageTrouble(error)) return error;
  if (isNamed(error, 'QuotaExceededError')) return trouble('storage-full');
  const says = error instanceof Error ? error.message : String(error);
  return trouble('storage-unavailable', { facts: { says } });
}

function isNamed(error: unknown, name: string): boolean {
  return typeof error === 'object' && error !== null && Reflect.get(error, 'name') === name;
}
