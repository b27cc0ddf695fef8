import { posix } from 'node:path';
import { IMPURE_NAMES, PACKAGES, PURE_ROOMS, ROOMS, type Room } from './rules.ts';
import type { Source } from './source.ts';

/** Every broken rule of the house, one sentence each. */
export function faultsOf(sources: readonly Source[]): readonly string[] {
  return [
    ...sources.flatMap((source) => [
      ...roomFaults(source),
      ...packageFaults(source),
      ...habitFaults(source),
    ]),
    ...circleFaults(sources),
  ];
}

function roomOf(path: string): Room | undefined {
  const room = path.split('/')[0] ?? '';
  return room in ROOMS ? (room as Room) : undefined;
}

/** The path under src that a relative import means. */
function target(from: string, specifier: string): string {
  return posix.normalize(posix.join(posix.dirname(from), specifier.replace(/\?.*$/, '')));
}

function isRelative(specifier: string): boolean {
  return specifier.startsWith('.');
}

function roomFaults({ path, imports }: Source): readonly string[] {
  const room = roomOf(path);
  if (!room) return [`${path} stands in no room of the house.`];
  const may: readonly string[] = ROOMS[room];
  return imports.filter(isRelative).flatMap((specifier) => {
    const goal = target(path, specifier);
    const other = roomOf(goal);
    if (!other) return [`${path} imports ${specifier}, which lies outside the rooms.`];
    if (other === room || may.includes(other)) return [];
    return [
      `${path} imports ${goal}: ${room} may import ${may.length > 0 ? may.join(', ') : 'no other room'}.`,
    ];
  });
}

function packageFaults({ path, imports }: Source): readonly string[] {
  return imports
    .filter((specifier) => !isRelative(specifier))
    .flatMap((specifier) => {
      const name = packageOf(specifier);
      const places = PACKAGES[name];
      if (!places) return [`${path} imports ${name}, which the house's table doesn't know.`];
      const allowed = places.some((place) => path === place || path.startsWith(`${place}/`));
      return allowed ? [] : [`${path} imports ${name}: only ${places.join(' and ')} may.`];
    });
}

function packageOf(specifier: string): string {
  if (specifier.startsWith('node:')) return 'node:';
  const parts = specifier.split('/');
  return parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/');
}

function habitFaults(source: Source): readonly string[] {
  const { path, imports, names } = source;
  const faults: string[] = [];
  if (/(^|\/)index\.tsx?$/.test(path)) {
    faults.push(`${path} is a barrel: import from the file that holds the thing itself.`);
  }
  if (source.hasDefaultExport) faults.push(`${path} has a default export: give it a name.`);
  for (const specifier of imports) {
    if (isRelative(specifier) && !/\.\w+(\?.*)?$/.test(specifier)) {
      faults.push(`${path} imports ${specifier} without its ending (.ts or .tsx).`);
    }
  }
  for (const words of source.wordsInMarkup) {
    faults.push(`${path} says “${words}” in its markup: words live in the dictionaries.`);
  }
  const room = roomOf(path);
  if (room && PURE_ROOMS.includes(room)) {
    for (const name of names) {
      if (IMPURE_NAMES.has(name) || name === 'Math.random' || /^\.(toLocale|locale)/.test(name)) {
        faults.push(`${path} uses ${name}: ${room} touches no clock, chance, locale or page.`);
      }
    }
  }
  return faults;
}

/** Each circle of imports once, as the walk round it. */
function circleFaults(sources: readonly Source[]): readonly string[] {
  const known = new Map(sources.map((source) => [source.path, source]));
  const done = new Set<string>();
  const faults: string[] = [];

  const visit = (path: string, trail: readonly string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) {
      faults.push(`Imports go in a circle: ${[...trail.slice(at), path].join(' → ')}.`);
      return;
    }
    if (done.has(path)) return;
    for (const specifier of known.get(path)?.imports.filter(isRelative) ?? []) {
      visit(target(path, specifier), [...trail, path]);
    }
    done.add(path);
  };
  for (const { path } of sources) visit(path, []);
  return faults;
}
