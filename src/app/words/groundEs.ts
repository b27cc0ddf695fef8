import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { groundEn } from './groundEn.ts';

/** Words of the depths taped down to the ground. Reading: lectura. */
export const groundEs = ({ form }: TermsEs): typeof groundEn => ({
  title: 'Lecturas del suelo',
  hint: `Tense un hilo de lado a lado de la ${form.one}, o ponga la regla atravesada, y mida con cinta hasta el suelo: de cinco a nueve lugares, parejos por toda la losa, no donde se ve hondo.`,
  depthBy: 'Calcular el volumen con',
  by: {
    thickness: 'el espesor puesto',
    readings: 'el promedio de estas lecturas',
  },
  none: 'Todavía ninguna.',
  add: 'Otra lectura',
  addHint: 'Escriba el espesor y oprima Enter.',
  row: (number) => `Lectura ${number}`,
  depth: 'Espesor',
  at: { x: 'A lo largo', y: 'Hacia arriba' },
  places:
    'Los lugares pueden quedar vacíos: entonces todas las lecturas pesan igual. A lo largo y hacia arriba son desde la primera esquina de la plancha; con todos, una lectura pesa lo que el suelo más cercano a ella.',
  remove: (number) => `Quitar la lectura ${number} de la lista`,
  removeShort: 'Quitar',
});
