import type { meshEn } from './meshEn.ts';

/** Words of the lists of mesh, on the truck and at the yard. */
export const meshEs: typeof meshEn = {
  title: 'Malla disponible',
  fields: {
    form: 'Qué es',
    length: 'Largo',
    width: 'Ancho',
    count: 'Cuántas',
    price: 'Precio de una',
  },
  forms: { sheet: 'Hoja', roll: 'Rollo' },
  truck: {
    title: 'En la camioneta',
    hint: 'Hojas enteras, sobrantes, o lo que queda de un rollo. Se tienden primero.',
    none: 'Nada en la lista: toda la malla es por comprar.',
    add: 'Poner una en la camioneta',
    added: 'Puesta en la camioneta. Escriba qué es.',
  },
  yard: {
    title: 'Del proveedor',
    hint: 'Hojas y rollos enteros que vende su proveedor, y lo que cuesta cada uno. Deje vacío el precio si no lo sabe. Un plan compra de un solo tipo: el más barato, o el de menos área mientras falte un precio.',
    none: 'Nada en la lista: no se puede comprar ninguna.',
    add: 'Poner una en la lista del proveedor',
    added: 'Puesta en la lista del proveedor. Escriba qué es.',
  },
  row: (form, length, width) => `${form}, ${length} por ${width}`,
  remove: (what) => `Quitar ${what} de la lista`,
  removeShort: 'Quitar',
};
