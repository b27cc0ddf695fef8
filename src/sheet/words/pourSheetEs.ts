import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { pourSheetEn } from './pourSheetEn.ts';

/** Words of the printed plan of the pour. */
export const pourSheetEs = ({ bag }: TermsEs): typeof pourSheetEn => ({
  title: 'Plan del colado',
  batches: 'Tandas',
  tick: 'Marque cada tanda cuando sale de la revolvedora',
  waterByBag: `Agua de cada tanda: lo que dice ${bag.the}. Empiece con lo mínimo, y no pase de lo máximo.`,
  noBatches: `No se listan las tandas: vea qué lo impide, o use una revolvedora más grande para tant${bag.end}s ${bag.many}.`,
  checkpoints: 'Puntos de revisión',
  checkpointsSay: `Por el puro neto. Cuando va una tanda más que esto, el suelo lleva más: mande por ${bag.many} ya, no al final.`,
  counted: `Contad${bag.end}s`,
});
