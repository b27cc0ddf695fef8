import type { orderEn } from './orderEn.ts';

/** Words of what is typed under the order's ticket. */
export const orderEs: typeof orderEn = {
  noOrder: 'Todavía no hay nada que pedir. Dibuje una plancha, o empiece con un rectángulo.',
  parts: {
    prices: 'Precios',
    extras: 'Extras',
    hours: 'Horas',
    proposal: 'Propuesta',
  },
  prices: {
    hint: 'Sus propios precios. Pasan a su siguiente trabajo. Deje vacío el que no sepa: entonces no está en ninguna suma. Cero es para lo que no cuesta.',
    each: (one) => `/ ${one.replace(/^1 /, '')}`,
    file: 'Precios',
    save: 'Guardar precios como CSV',
    open: 'Abrir precios de CSV…',
    taken: (count) => (count === 1 ? 'Se tomó un precio.' : `Se tomaron ${count} precios.`),
    refused: 'No se cambió nada. Corrija estas líneas y abra otra vez el archivo:',
    more: (count) => `Y ${count} más.`,
    problems: {
      quote: (line) =>
        `Línea ${line}: se abren comillas y nunca se cierran. Ponga unas donde acaba el texto.`,
      heads: (item, price) =>
        `La primera línea debe nombrar sus columnas: una “${item}”, una “${price}”. Guarde los precios como CSV para empezar con uno.`,
      unknown: (line, item) =>
        `Línea ${line}: “${item}” no está en ninguna línea de este trabajo. Quite la línea, o corrija su nombre.`,
      twice: (line, item) => `Línea ${line}: “${item}” ya estaba. Deje una de las dos.`,
      price: (line, says) => `Línea ${line}: ${says}`,
    },
  },
  extras: {
    hint: 'Lo que ningún croquis pide: gasolina, un permiso, un viaje de relleno, el tiradero. Se quedan con este trabajo.',
    newName: 'Otra cosa',
    add: 'Agregar una línea a la lista',
    added: 'Agregada a la lista. Escriba qué es.',
    row: (name) => `Extra: ${name}`,
    name: 'Qué',
    count: 'Cuánto',
    price: 'Precio de uno',
    weight: 'Peso de uno',
    remove: (name) => `Quitar ${name} de la lista`,
    removeShort: 'Quitar',
  },
  hours: {
    hint: 'Horas de una persona: dos personas por tres horas son seis. Lo escrito para este trabajo va antes que su tarifa; sus tarifas pasan al siguiente trabajo.',
    typed: (task) => `${task}, este trabajo`,
    rate: (task) => `${task}, su tarifa`,
  },
  proposal: {
    hint: 'Una página para el cliente, se elige en la estación Hoja. Lleva el precio y ningún costo suyo. Lo que no se incluye y las condiciones pasan a su siguiente trabajo.',
    scope: 'El trabajo',
    exclusions: 'No incluido',
    terms: 'Condiciones',
  },
};
