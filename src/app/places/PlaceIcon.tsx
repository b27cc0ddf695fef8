import type { Place } from './places.ts';

/** Each station by the thing one has in hand there. */
const PATHS: Readonly<Record<Place, string>> = {
  // Ground line with soil under it.
  ground: 'M2 9h20M5 9l-2 4M10 9l-2 4M15 9l-2 4M20 9l-2 4M6 17h1M12 16h1M17 18h1M10 20h1',
  // A board on edge and the stake behind it.
  forms: 'M2 8h20v6H2zM15 3v5M19 3v5M15 3h4M15 14l2 7 2-7',
  // Mesh.
  steel: 'M3 6h18M3 12h18M3 18h18M6 3v18M12 3v18M18 3v18',
  // Two slabs and the joint between them.
  joints: 'M2 8h8v9H2zM14 8h8v9h-8zM12 5v15',
  // A bag, tied.
  mix: 'M8 3h8l-2 4c4 2 5 5 5 8 0 4-2 6-7 6s-7-2-7-6c0-3 1-6 5-8zM9 7h6',
  // A truck with its bed loaded.
  order:
    'M2 6h12v10H2zM14 9h5l3 4v3h-8M5 6V3h6v3M4 18a2 2 0 1 0 4 0 2 2 0 1 0-4 0M16 18a2 2 0 1 0 4 0 2 2 0 1 0-4 0',
  // A folded sheet with its drawing.
  sheet: 'M5 2h10l4 4v16H5zM15 2v4h4M8 11h8v7H8zM8 14h4v4',
  // A barrow.
  'pour-day': 'M2 6h4l3 9h9l3-7H7M8 15l-3 5M18 15l1 5M12 17a2.500 2.500 0 1 0 .01 0z',
};

export function PlaceIcon({ place }: { readonly place: Place }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={PATHS[place]} />
    </svg>
  );
}
