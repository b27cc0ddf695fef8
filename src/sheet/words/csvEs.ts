import type { csvEn } from './csvEn.ts';

/** Words of the tables that go out as CSV. */
export const csvEs: typeof csvEn = {
  number: 'número',
  figures: 'Cantidades',
  heads: {
    station: 'Estación',
    figure: 'Cantidad',
    shown: 'Como se lee',
    number: 'Número',
    unit: 'Unidad',
    kind: 'Clase',
  },
  prices: { item: 'Clave', what: 'Qué es', unit: 'De', price: 'Precio' },
  roles: { net: 'neto', allowance: 'margen', rounding: 'redondeo', order: 'por traer' },
};
