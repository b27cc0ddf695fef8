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
  standing: {
    layout: 'Acomodo de la malla',
    bars: 'Plan de corte de las varillas',
    first: 'El acomodo es la primera respuesta: no se sabe si otro lleva menos.',
    least: 'Comprobado: ningún acomodo lleva menos, pues el área y el traslape piden lo mismo.',
    gap: (seconds, has, least) =>
      `El mejor hallado en ${seconds} s, no comprobado: compra ${has}; el área y el traslape solos pedirían ${least}.`,
    otherKind: (seconds) =>
      `El mejor hallado en ${seconds} s, no comprobado: ninguno de su tipo lleva menos, pero otro tipo de su proveedor podría costar menos.`,
    truckOnly: (seconds) =>
      `El mejor hallado en ${seconds} s: tendido con la malla de la camioneta. No se descarta uno que empiece menos de ellas.`,
    cutting: {
      first: 'El plan es la primera respuesta: no se sabe si otro lleva menos varillas.',
      proved: (seconds) =>
        `Comprobado en ${seconds} s: ningún plan compra menos varilla. Así ninguno lleva menos cortes.`,
      gap: {
        price: (seconds, most) =>
          `El mejor hallado en ${seconds} s, no comprobado: otro plan podría costar a lo más ${most} menos.`,
        length: (seconds, most) =>
          `El mejor hallado en ${seconds} s, no comprobado: otro plan podría comprar a lo más ${most} menos de varilla.`,
        cuts: (seconds, most) =>
          `El mejor hallado en ${seconds} s. Comprobado: ningún plan compra menos varilla. No comprobado: otro podría ahorrar ${most} a lo más.`,
      },
    },
  },
  row: (form, length, width) => `${form}, ${length} por ${width}`,
  remove: (what) => `Quitar ${what} de la lista`,
  removeShort: 'Quitar',
};
