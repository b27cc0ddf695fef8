import type { Job } from './job.ts';
import { FORMAT, VERSION } from './schema.ts';

/** The order in which names are written, so that the same job is always the same text. */
const ORDER: readonly string[] = [
  'format',
  'version',
  'job',
  'id',
  'name',
  'site',
  'notes',
  'units',
  'kind',
  'pourAgainst',
  'treads',
  'form',
  'closed',
  'x',
  'y',
  'rise',
  'center',
  'diameter',
  'on',
  'feature',
  'corner',
  't',
  'shape',
  'corners',
  'nextId',
  'features',
  'practices',
];

function rank(name: string): number {
  const place = ORDER.indexOf(name);
  return place < 0 ? ORDER.length : place;
}

/** The text of a job's file. The same job gives the same text, whichever way it was put together. */
export function serializeJob(job: Job): string {
  const inOrder = (_: string, value: unknown): unknown =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(
          Object.entries(value).sort(
            ([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0),
          ),
        )
      : value;
  return `${JSON.stringify({ format: FORMAT, version: VERSION, job }, inOrder, 2)}\n`;
}
