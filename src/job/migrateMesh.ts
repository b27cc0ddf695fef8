import { defaultPractices } from './defaults.ts';

/** Fields of a file that aren't checked yet. */
type Fields = Readonly<Record<string, unknown>>;

/** Version 1 knew one sheet size, one lap, and mesh by its square and weight: all of that is kept. */
export function steelOfMesh({ lap, cover, square, weight }: Fields): unknown {
  const { mesh, ...steel } = defaultPractices().steel;
  const known = square === mesh.own.square && weight === mesh.own.weight;
  return {
    ...steel,
    mesh: {
      ...mesh,
      style: known ? mesh.style : 'own',
      own: { square, weight },
      lapEnds: lap,
      lapSides: lap,
      cover,
    },
  };
}

/** The one sheet size that version 1 knew, as what the yard sells. */
export function stockOfMesh({ sheetLength, sheetWidth }: Fields): unknown {
  return {
    truck: [],
    yard: [{ id: 'm1', form: 'sheet', length: sheetLength, width: sheetWidth }],
  };
}
