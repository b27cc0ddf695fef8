import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { orderSheetEn, proposalEn } from './orderSheetEn.ts';

/** Words of the page of the order. */
export const orderSheetEs = ({ bag }: TermsEs): typeof orderSheetEn => ({
  title: 'Pedido y carga',
  plot: `${bag.Many} o camión: costo según volumen`,
  keyBags: bag.Many,
  keyTruck: 'Camión',
  keyJob: 'Este trabajo',
});

export const proposalEs: typeof proposalEn = {
  title: 'Propuesta',
  scope: 'El trabajo',
  noScope: 'Todavía no está escrito: escríbalo en la estación Pedido.',
  exclusions: 'No incluido',
  noExclusions: 'No se nombró nada.',
  terms: 'Condiciones',
  noTerms: 'No se escribió ninguna.',
  price: 'Precio',
  noPrice: 'Todavía no hay precio: al pedido le faltan precios u horas. Vea la estación Pedido.',
  tax: { none: 'No incluye impuesto.', in: 'Incluye impuesto.' },
  customer: 'Cliente, fecha',
  contractor: 'Contratista, fecha',
};
