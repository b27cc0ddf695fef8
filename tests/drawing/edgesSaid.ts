/** What a plan says of the edges of a pour, read from its texts. */
import type { PrintedChain } from '../../src/drawing/dimension/board.ts';
import { en } from '../../src/drawing/words/en.ts';
import type { Job } from '../../src/job/job.ts';
import type { NetPour } from '../../src/takeoff/outline/pour.ts';
import { formatLength } from '../../src/units/length.ts';

/** A printed length, in sixteenths of an inch or in mm. */
function steps(text: string): number {
  const metric = /^([\d.]+) (m|mm)$/.exec(text);
  if (metric) return Math.round(Number(metric[1]) * (metric[2] === 'm' ? 1000 : 1));
  const read = /^(?:(\d+)'-)?(?:(\d+)(?: (\d+)\/(\d+))?|(\d+)\/(\d+))"$/.exec(text);
  if (!read) throw new Error(`“${text}” isn’t a length`);
  const [feet, inches, ...parts] = read.slice(1).map((one) => Number(one ?? 0));
  const [top, bottom] = parts[1] ? parts : parts.slice(2);
  return (feet! * 12 + inches!) * 16 + (bottom ? (top! * 16) / bottom : 0);
}

/** Chains whose figures aren't all said, or don't add up to their overall as printed. */
export function brokenChains(
  chains: readonly PrintedChain[],
  said: readonly string[],
): readonly string[] {
  return chains.flatMap(({ bays, overall }) => {
    const unsaid = [...bays, overall].filter((text) => !said.includes(text));
    const sum = bays.reduce((total, bay) => total + steps(bay.split(' ±')[0]!), 0);
    const adds = sum === steps(overall);
    return adds && unsaid.length === 0 ? [] : [`${bays.join(' + ')} = ${overall}; ${unsaid}`];
  });
}

/**
 * Edges of the outer rings whose length (or the chord of their arc) is said too seldom. A length that carries the rounding of
 * its chain is said by what it was before.
 */
export function unsaidEdges(
  { units }: Job,
  { pour }: { readonly pour?: NetPour },
  said: readonly string[],
): readonly string[] {
  const wanted = (pour?.pieces ?? []).flatMap(({ rings }) =>
    rings[0]!.edges.map(({ length, arc, from, to }) => {
      const straight = Math.hypot(to.x - from.x, to.y - from.y);
      return arc ? en.chord(formatLength(straight, units)) : formatLength(length, units);
    }),
  );
  const left = [...said];
  return wanted.filter((text) => {
    const at = left.findIndex((one) => one === text || carries(one, text));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

function carries(said: string, text: string): boolean {
  const [length, by] = said.split(' ±');
  if (by === undefined || text.endsWith(en.chord(''))) return false;
  return Math.abs(steps(length!) - steps(text)) === steps(by);
}
