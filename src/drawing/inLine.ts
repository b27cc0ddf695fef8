import { EVERYTHING, lineMeetsBox, type Place, STEEL } from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  readingAngle,
  textBox,
  wayFrom,
  write,
} from './dimension/board.ts';

/** A word in the line for every so many millimetres of it. */
const EVERY_MM = 70;
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

/** A straight line on the output, mm. */
export type Stretch = readonly [Place, Place];

interface InLine {
  readonly text: string;
  /** Of the output, mm. */
  readonly from: Place;
  readonly to: Place;
  /** The line's own kind in the clearance, which the word may stand on. */
  readonly own: number;
  /** Lines of its own kind that it may not stand on. */
  readonly clearOf?: readonly Stretch[];
  readonly layer: NonNullable<Lettered['layer']>;
  readonly feature?: string;
}

/** A word that stands astride a straight line, again and again along it, wherever there is room. Gives back whether it stands. */
export function writeInLine(
  board: Board,
  { text, from, to, own, clearOf = [], layer, feature }: InLine,
): boolean {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const parts = Math.max(1, Math.round(length / EVERY_MM));
  const way = wayFrom(from, to);
  const angle = readingAngle(way);
  // On paper no letter is smaller than 2.5 mm.
  const height = board.lettering.height * 0.9;
  let stands = false;
  for (let part = 0; part < parts; part++) {
    const places = SHARES.map((share): Lettered => {
      const middle = along(from, way, ((part + share) / parts) * length);
      return {
        text,
        at: {
          x: middle.x + (height / 2) * Math.sin(angle),
          y: middle.y - (height / 2) * Math.cos(angle),
        },
        angle,
        anchor: 'middle',
        height,
        style: 'label',
        layer,
        ...(feature === undefined ? {} : { feature }),
      };
    });
    const isFree = (lettered: Lettered, over: number) =>
      isRoomFor(board, lettered, EVERYTHING - own - over) &&
      !clearOf.some(([a, b]) => lineMeetsBox(a, b, textBox(board, lettered)));
    // On a second look steel may lie behind it.
    const free = places.find((one) => isFree(one, 0));
    const over = free ? undefined : places.find((one) => isFree(one, STEEL));
    if (free) write(board, free);
    else if (over) write(board, { ...over, overSteel: true });
    if (free || over) stands = true;
  }
  return stands;
}
