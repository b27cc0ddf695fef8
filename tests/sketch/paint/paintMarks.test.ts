import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/drawing/marks.ts';
import { arcOf } from '../../../src/geometry/arc.ts';
import { fontPx } from '../../../src/sketch/paint/fontSize.ts';
import { paintMarks } from '../../../src/sketch/paint/paintMarks.ts';
import type { Palette } from '../../../src/sketch/paint/palette.ts';

const LOOK = {
  view: { center: { x: 0, y: 0 }, gridPerPx: 10 },
  size: { width: 200, height: 200 },
  palette: new Proxy({}, { get: (_, name) => `colour ${String(name)}` }) as Palette,
};

/** A context that writes down what is asked of it. */
function recorder() {
  const calls: (readonly [string, ...unknown[]])[] = [];
  const context = new Proxy(
    {},
    {
      get:
        (_, name) =>
        (...given: unknown[]) => {
          calls.push([String(name), ...given]);
        },
      set(_, name, value) {
        calls.push([`${String(name)} =`, value]);
        return true;
      },
    },
  ) as CanvasRenderingContext2D;
  return { calls, context };
}

function painted(...marks: readonly Mark[]) {
  const { calls, context } = recorder();
  paintMarks(context, marks, LOOK);
  return calls;
}

function line(...segments: Extract<Mark, { kind: 'line' }>['path']['segments'][number][]): Mark {
  const path = { start: { x: -500, y: 0 }, closed: false, segments };
  return { kind: 'line', layer: 'edges', style: 'outline', path };
}

describe('lines', () => {
  test('run up the screen where the site runs north', () => {
    const calls = painted(line({ to: { x: 500, y: 500 } }));
    expect(calls).toContainEqual(['moveTo', 50, 100]);
    expect(calls).toContainEqual(['lineTo', 150, 50]);
  });

  test.each([200, -200])('an arc with rise %i ends at its end, on its own side', (rise) => {
    const from = { x: -500, y: 0 };
    const to = { x: 500, y: 0 };
    const call = painted(line({ to, arc: arcOf(from, to, rise) })).find(([name]) => name === 'arc');
    if (!call) throw new Error('an arc was painted');
    const [, cx, cy, radius, begin, end, anticlockwise] = call as [
      string,
      number,
      number,
      number,
      number,
      number,
      boolean,
    ];
    const place = (angle: number) => [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
    expect(place(begin)[0]).toBeCloseTo(50, 6);
    expect(place(begin)[1]).toBeCloseTo(100, 6);
    expect(place(end)[0]).toBeCloseTo(150, 6);
    // Positive rise lies to the right of the way east: south, so lower on the screen.
    const middle = place((begin + end) / 2);
    expect(middle[0]).toBeCloseTo(100, 6);
    expect(middle[1]).toBeCloseTo(rise > 0 ? 120 : 80, 6);
    expect(anticlockwise).toBe(end < begin);
  });
});

describe('many of one kind', () => {
  const across = line({ to: { x: 500, y: 0 } });
  const up = line({ to: { x: -500, y: 500 } });

  test('lines of one style that follow each other are one stroke, others are not', () => {
    const dashed: Mark = { ...across, kind: 'line', style: 'hidden' } as Mark;
    const names = painted(across, up, dashed, across).map(([name]) => name);
    expect(names.filter((name) => name === 'stroke')).toHaveLength(3);
    expect(names.filter((name) => name === 'moveTo')).toHaveLength(4);
  });

  test('stakes are one fill, each square about its own middle, turned its own way', () => {
    const stake = (x: number, angle: number): Mark => ({
      kind: 'symbol',
      layer: 'forms',
      symbol: 'stake',
      at: { x, y: 0 },
      size: 2,
      angle,
    });
    const calls = painted(stake(0, 0), stake(500, Math.PI / 6));
    expect(calls.filter(([name]) => name === 'fill')).toHaveLength(1);
    const places = calls.filter(([name]) => name === 'moveTo' || name === 'lineTo');
    expect(places).toHaveLength(8);
    const middle = (from: number, axis: 1 | 2) =>
      places.slice(from, from + 4).reduce((sum, call) => sum + Number(call[axis]), 0) / 4;
    expect(middle(0, 1)).toBeCloseTo(100, 6);
    expect(middle(4, 1)).toBeCloseTo(150, 6);
    expect(middle(4, 2)).toBeCloseTo(100, 6);
    // The side from the first corner to the second runs at 30° up the screen, where y runs down.
    const [a, b] = [places[4]!, places[5]!];
    const way = Math.atan2(Number(b[2]) - Number(a[2]), Number(b[1]) - Number(a[1]));
    expect(way).toBeCloseTo(-Math.PI / 6, 6);
  });
});

describe('texts', () => {
  const text: Mark = {
    kind: 'text',
    layer: 'dimensions',
    style: 'dimension',
    text: '12\'-0"',
    at: { x: 0, y: 0 },
    height: 2.5,
    angle: Math.PI / 2,
    anchor: 'middle',
    halo: true,
  };

  test('turn the other way on a screen whose y runs down, paper first', () => {
    const calls = painted(text);
    expect(calls).toContainEqual(['rotate', -Math.PI / 2]);
    const names = calls.map(([name]) => name);
    expect(names.indexOf('strokeText')).toBeLessThan(names.indexOf('fillText'));
    expect(names.indexOf('strokeText')).toBeGreaterThan(0);
  });

  test('are never smaller than 12 px', () => {
    expect(fontPx(1)).toBe(12);
    expect(fontPx(2.5)).toBeGreaterThan(12.9);
  });
});

test('what is saved is restored, so that one mark leaves nothing on the next', () => {
  const symbols = [
    'stake',
    'stake-hand',
    'stake-inside',
    'weight',
    'end-bar',
    'look-here',
    'origin',
    'tick',
    'arrow',
    'cross',
    'dot',
    'north',
  ] as const;
  const marks = symbols.map(
    (symbol): Mark => ({
      kind: 'symbol',
      layer: 'forms',
      symbol,
      at: { x: 0, y: 0 },
      size: 2,
      angle: 0,
    }),
  );
  const names = painted(...marks).map(([name]) => name);
  const count = (name: string) => names.filter((one) => one === name).length;
  expect(count('save')).toBe(symbols.length + 1);
  expect(count('restore')).toBe(count('save'));
});
