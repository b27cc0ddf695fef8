import type { BoardSize, Lumber, TruckBoards, YardBoard } from './job.ts';

/** More boards in one row than this is a slip of the finger; the schema has the same bound. */
export const MOST_BOARDS = 1000;

/** Shallow to deep. */
export const BOARD_SIZES: readonly BoardSize[] = [
  '1x4',
  '2x4',
  '1x6',
  '2x6',
  '2x8',
  '2x10',
  '2x12',
];

/**
 * Lists with these boards on the truck as well. Boards alike in size, length and twist stand in one row: its count
 * grows, to a thousand at most.
 */
export function withOnTruck(lumber: Lumber, more: readonly Omit<TruckBoards, 'id'>[]): Lumber {
  return more.reduce((lists, boards) => withRowOnTruck(lists, boards), lumber);
}

function withRowOnTruck(lumber: Lumber, boards: Omit<TruckBoards, 'id'>): Lumber {
  const { truck } = lumber;
  const alike = truck.find(
    ({ size, length, twisted, count }) =>
      size === boards.size &&
      length === boards.length &&
      twisted === boards.twisted &&
      count + boards.count <= MOST_BOARDS,
  );
  if (!alike) return { ...lumber, truck: [...truck, { id: freeRowId(lumber, 't'), ...boards }] };
  const grown = { ...alike, count: alike.count + boards.count };
  return { ...lumber, truck: truck.map((row) => (row === alike ? grown : row)) };
}

/** Lists with this board sold by the yard: one that was listed already has the new price. */
export function withInYard(lumber: Lumber, board: Omit<YardBoard, 'id'>): Lumber {
  const { yard } = lumber;
  const listed = yard.find(({ size, length }) => size === board.size && length === board.length);
  if (!listed) return { ...lumber, yard: [...yard, { id: freeRowId(lumber, 'y'), ...board }] };
  return {
    ...lumber,
    yard: yard.map((row) => (row === listed ? { id: listed.id, ...board } : row)),
  };
}

/** An id that no row of either list has. */
function freeRowId({ truck, yard }: Lumber, letter: 't' | 'y'): string {
  const taken = new Set([...truck, ...yard].map(({ id }) => id));
  let number = 1;
  while (taken.has(`${letter}${number}`)) number += 1;
  return `${letter}${number}`;
}
