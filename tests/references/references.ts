import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A published source: what it says in our words, and whether it was read or is from memory. */
export interface Reference {
  readonly id: string;
  readonly title: string;
  readonly issuer: string;
  readonly edition: string;
  readonly where: string;
  readonly url?: string;
  readonly read: 'seen' | 'memory';
  readonly says: string;
}

export const REFERENCES: readonly Reference[] = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith('.json'))
  .map((name) => JSON.parse(readFileSync(join(import.meta.dirname, name), 'utf8')));

/** The reference of an id; a check that names one that isn't there fails. */
export function reference(id: string): Reference {
  const found = REFERENCES.find((one) => one.id === id);
  if (!found) throw new Error(`There is no tests/references/${id}.json.`);
  return found;
}
