import type { sectionsSheetEn } from './sectionsSheetEn.ts';

/** Words of the pages of sections. */
export const sectionsSheetEs: typeof sectionsSheetEn = {
  title: 'Secciones',
  rest: 'Lo que el trabajo no sabe no va a medida: qué tan hondo llega lo que ya está, cuánto entra una estaca. Las profundidades son desde el acabado. El código local decide espesor, base, acero y helada; nada de esto es un diseño estructural.',
  unplaced: (sizes) => `No cabe en la sección: ${sizes}.`,
};
