/** A corner of a module, in modules from the upper left. */
export interface ModuleCorner {
  readonly x: number;
  readonly y: number;
}

/**
 * The outlines of what is dark, to be filled even-odd: modules side by side are one shape, so that no painter leaves a
 * hairline between them.
 */
export function outlinesOf(
  modules: readonly (readonly boolean[])[],
): readonly (readonly ModuleCorner[])[] {
  const ends = new Map<string, ModuleCorner[]>();
  const dark = (x: number, y: number) => modules[y]?.[x] ?? false;
  const add = (ax: number, ay: number, bx: number, by: number) => {
    const key = `${ax} ${ay}`;
    const there = ends.get(key);
    if (there) there.push({ x: bx, y: by });
    else ends.set(key, [{ x: bx, y: by }]);
  };
  modules.forEach((row, y) => {
    row.forEach((is, x) => {
      if (!is) return;
      if (!dark(x, y - 1)) add(x, y, x + 1, y);
      if (!dark(x + 1, y)) add(x + 1, y, x + 1, y + 1);
      if (!dark(x, y + 1)) add(x + 1, y + 1, x, y + 1);
      if (!dark(x - 1, y)) add(x, y + 1, x, y);
    });
  });
  const loops: ModuleCorner[][] = [];
  for (const key of ends.keys()) {
    while (ends.get(key)?.length) loops.push(walk(ends, key));
  }
  return loops;
}

/** Takes one closed outline out of the edges, from a corner on, without the corners at which it goes straight on. */
function walk(ends: ReadonlyMap<string, ModuleCorner[]>, from: string): ModuleCorner[] {
  const loop: ModuleCorner[] = [];
  let at = ends.get(from)?.pop();
  while (at) {
    loop.push(at);
    const key = `${at.x} ${at.y}`;
    at = key === from ? undefined : ends.get(key)?.pop();
  }
  return loop.filter((_, i) => {
    const before = loop.at(i - 1)!;
    const after = loop[(i + 1) % loop.length]!;
    return before.x !== after.x && before.y !== after.y;
  });
}
