import { defaultLumber, defaultMeshStock, defaultPractices } from '../../../src/job/defaults.ts';
import type {
  BlockOut,
  BuildingLine,
  Corner,
  Feature,
  Job,
  Outline,
} from '../../../src/job/job.ts';
import { FOOT, type Grid } from '../../../src/units/grid.ts';

/** Corners as [x, y] or [x, y, rise], in feet unless told otherwise. */
export type Places = readonly (readonly [number, number, number?])[];

/** Builds the features of a job for a test; ids are the names. */
export function outline(id: string, places: Places, unit: Grid = FOOT, closed = true): Outline {
  return {
    form: 'outline',
    closed,
    corners: places.map(
      ([x, y, rise], i): Corner => ({
        id: `${id}-${i}`,
        x: Math.round(x * unit),
        y: Math.round(y * unit),
        rise: Math.round((rise ?? 0) * unit),
      }),
    ),
  };
}

type OutlineKind = 'pad' | 'existing-slab' | 'steps' | 'patch' | 'no-stake-zone';

export function shape(kind: OutlineKind, id: string, places: Places, unit: Grid = FOOT): Feature {
  const base = { id, name: id, shape: outline(id, places, unit) };
  return kind === 'steps' ? { kind, treads: 3, ...base } : { kind, ...base };
}

export function wall(
  id: string,
  places: Places,
  options: { closed?: boolean; pourAgainst?: boolean; unit?: Grid } = {},
): BuildingLine {
  const { closed = true, pourAgainst = true, unit = FOOT } = options;
  return {
    kind: 'building-line',
    id,
    name: id,
    shape: outline(id, places, unit, closed),
    pourAgainst,
  };
}

export function utilityLine(id: string, places: Places, unit: Grid = FOOT): Feature {
  const line = outline(id, places, unit, false);
  return { kind: 'utility-line', id, name: id, shape: line, service: 'gas' };
}

export function blockOut(id: string, places: Places, unit: Grid = FOOT): BlockOut {
  return { kind: 'block-out', id, name: id, shape: outline(id, places, unit) };
}

export function post(
  id: string,
  x: number,
  y: number,
  diameter: number,
  unit: Grid = FOOT,
): BlockOut {
  return {
    kind: 'block-out',
    id,
    name: id,
    shape: {
      form: 'round',
      center: { x: Math.round(x * unit), y: Math.round(y * unit) },
      diameter: Math.round(diameter * unit),
    },
  };
}

export function jobOf(features: readonly Feature[], closeEnough?: Grid): Job {
  const practices = defaultPractices();
  return {
    name: 'Test',
    site: '',
    notes: '',
    units: 'feet-inches',
    features,
    practices: closeEnough === undefined ? practices : { ...practices, closeEnough },
    lumber: defaultLumber(),
    meshStock: defaultMeshStock(),
    handStakes: [],
    ground: { readings: [], depthBy: 'thickness' },
    nextId: 1,
  };
}
