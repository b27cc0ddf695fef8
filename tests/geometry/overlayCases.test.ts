import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Cutter, clip } from '../../src/geometry/clip.ts';
import { selfCrossings } from '../../src/geometry/crossings.ts';
import type { Ring } from '../../src/geometry/point.ts';
import { doubledExactArea } from '../random/exactArea.ts';

/**
 * Overlay cases of two open test suites, read from beside the checkout: they are not part of this project. Their float
 * coordinates are scaled to a grid of some four million units across and rounded at the door; results are held against
 * the expected ones by the area of what is in one and not in the other.
 */
const DATA = join(import.meta.dirname, '../../../shared/data/polybool');
const isThere = existsSync(DATA);
const ACROSS = 2 ** 22;

type Places = readonly (readonly [number, number])[];
/** An outer ring, then its holes. */
type Shape = readonly Places[];
type Shapes = readonly Shape[];

interface OverlayCase {
  readonly name: string;
  readonly operation: 'difference' | 'union';
  readonly args: readonly Shapes[];
  readonly expected: Shapes;
}

interface Geometry {
  readonly type: string;
  readonly coordinates: unknown;
}

function shapesOf({ type, coordinates }: Geometry): Shapes {
  if (type === 'Polygon') return [coordinates as Shape];
  if (type === 'MultiPolygon') return coordinates as Shapes;
  throw new Error(`Not an area: ${type}`);
}

function geojsonCases(): OverlayCase[] {
  const folder = join(DATA, 'polygon-clipping');
  const read = (...path: string[]) => JSON.parse(readFileSync(join(folder, ...path), 'utf8'));
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => {
      const { features } = read(name, 'args.geojson') as { features: { geometry: Geometry }[] };
      const args = features.map(({ geometry }) => shapesOf(geometry));
      return readdirSync(join(folder, name)).flatMap((file): OverlayCase[] => {
        const operation = file.replace('.geojson', '');
        if (operation !== 'difference' && operation !== 'union') return [];
        const expected = shapesOf((read(name, file) as { geometry: Geometry }).geometry);
        return [{ name: `${name}: ${operation}`, operation, args, expected }];
      });
    });
}

/** 'MULTIPOLYGON (((0 0, 1 0, …), (hole)), ((…)))'; nothing for lines and points. */
function shapesOfText(text: string): Shapes | undefined {
  const kind = text.trim().split(/[\s(]/)[0];
  if (kind !== 'POLYGON' && kind !== 'MULTIPOLYGON') return undefined;
  const filled = text.replaceAll(/,\s*EMPTY|EMPTY\s*,?/g, '');
  if (!filled.includes('(')) return [];
  const body = filled
    .slice(filled.indexOf('('))
    .replaceAll(/(-?[\d.eE+-]+)\s+(-?[\d.eE+-]+)/g, '[$1,$2]')
    .replaceAll('(', '[')
    .replaceAll(')', ']');
  const nested = JSON.parse(body);
  return kind === 'POLYGON' ? [nested] : nested;
}

function textCases(): OverlayCase[] {
  const text = readFileSync(join(DATA, 'jts', 'TestNGOverlayA.xml'), 'utf8');
  return [...text.matchAll(/<case>([\s\S]*?)<\/case>/g)].flatMap(([, body]) => {
    const part = (tag: string) =>
      body?.match(new RegExp(`<${tag}>([\\s\\S]*?)</${tag}>`))?.[1] ?? '';
    const a = shapesOfText(part('a'));
    const b = shapesOfText(part('b'));
    if (!a || !b) return [];
    const tests = [
      ...(body ?? '').matchAll(
        /<op name="(difference|union)NG" arg1="(.)" arg2="(.)"[^>]*>([\s\S]*?)<\/op>/g,
      ),
    ];
    return tests.flatMap(([, operation, first, second, result]): OverlayCase[] => {
      const expected = shapesOfText(result ?? '');
      if (!expected || (operation !== 'difference' && operation !== 'union')) return [];
      const args = [first, second].map((which) => (which === 'A' ? a : b));
      return [
        { name: `${part('desc')}: ${operation} ${first} ${second}`, operation, args, expected },
      ];
    });
  });
}

function scaleOf(shapes: readonly Shapes[]): (places: Places) => Ring {
  const all = shapes.flatMap((one) => one.flatMap((shape) => shape.flat()));
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  const scale = ACROSS / Math.max(Math.max(...xs) - left, Math.max(...ys) - low);
  return (ring) =>
    ring.map(([x, y]) => ({ x: Math.round((x - left) * scale), y: Math.round((y - low) * scale) }));
}

/** A hole of a subject is cut out, but for what the other shapes put there. */
function holesOf(shapes: Shapes, grid: (places: Places) => Ring): Cutter[] {
  return shapes.flatMap((shape, k) =>
    shape.slice(1).map((hole) => ({
      outer: grid(hole),
      kept: shapes.filter((_, j) => j !== k).map(([outer]) => grid(outer!)),
    })),
  );
}

function run({ operation, args, expected }: OverlayCase): void {
  const grid = scaleOf(args);
  const subjects = operation === 'difference' ? args[0]! : args.flat();
  const cut = operation === 'difference' ? args.slice(1).flat() : [];
  const cutters = [
    ...holesOf(subjects, grid),
    ...cut.map(([outer, ...kept]) => ({ outer: grid(outer!), kept: kept.map(grid) })),
  ];
  const result = clip(
    subjects.map(([outer]) => grid(outer!)),
    cutters,
  );
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const ours = result.value.polygons.map(({ outer, holes }) => [outer, ...holes]);
  const theirs = expected.map((shape) => shape.map(grid));
  const rings = [...ours, ...theirs].flat();
  const shapes = [...ours, ...theirs];
  const isIn = (windings: readonly number[]): boolean => {
    let at = 0;
    const inside = shapes.map((shape) => {
      const [outer, ...holes] = windings.slice(at, at + shape.length);
      at += shape.length;
      return outer !== 0 && holes.every((winding) => winding === 0);
    });
    return inside.slice(0, ours.length).some(Boolean) !== inside.slice(ours.length).some(Boolean);
  };
  const apart = doubledExactArea(rings, isIn) / 2;
  const girth = rings.reduce(
    (sum, ring) =>
      sum +
      ring.reduce((length, a, i) => {
        const b = ring[(i + 1) % ring.length]!;
        return length + Math.hypot(b.x - a.x, b.y - a.y);
      }, 0),
    0,
  );
  // Corners of both are rounded to the grid.
  expect(apart).toBeLessThanOrEqual(girth + 1);
}

/** A pad never has holes of its own, so the door to the clippers takes none: one shape's can be cut out, several can't. */
function hasManyHoles({ operation, args }: OverlayCase): boolean {
  const subjects = operation === 'difference' ? args[0]! : args.flat();
  return subjects.length > 1 && subjects.filter((shape) => shape.length > 1).length > 1;
}

/** An outline that crosses itself never reaches the clippers: the takeoff says where it crosses, and stops. */
function crossesItself({ args }: OverlayCase): boolean {
  const grid = scaleOf(args);
  return args.flat(2).some((places) => selfCrossings(grid(places)).length > 0);
}

const all = isThere ? [...geojsonCases(), ...textCases()] : [];
const refused = all.filter(crossesItself);
const holed = all.filter((one) => !refused.includes(one) && hasManyHoles(one));
const cases = all.filter((one) => !refused.includes(one) && !holed.includes(one));

describe.skipIf(!isThere)(
  'overlay cases from beside the checkout (skipped where ../shared/data/polybool is not there)',
  () => {
    test('there are as many as there should be', () => {
      expect(cases.length).toBeGreaterThan(90);
      expect(refused.length).toBeLessThan(25);
    });
    test.each(cases.map((one) => [one.name, one] as const))('%s', (_, one) => run(one));
    test.skip.each(holed.map(({ name }) => [name]))(
      '%s (several subjects with holes of their own: no pad has any)',
      () => {},
    );
  },
);
