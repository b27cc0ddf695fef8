import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { boardsEn } from './boardsEn.ts';

/** Words of the lists of boards, on the truck and at the yard. Yard: proveedor; also maderería. Truck: camioneta; also troca. */
export const boardsEs = ({ form }: TermsEs): typeof boardsEn => ({
  title: 'Tablas disponibles',
  size: (size) => size.replace('x', '×'),
  fields: { size: 'Medida', length: 'Largo', count: 'Cuántas', price: 'Precio' },
  twisted: 'Torcida',
  straight: 'derecha',
  truck: {
    title: 'En la camioneta',
    hint: `La ${form.one} se corta primero de estas. La regla corre sobre el canto de arriba, así que una tabla torcida deja la losa ondulada: el plan no la usa, salvo que las prácticas digan otra cosa.`,
    none: 'No hay tablas en la lista: todas son por comprar.',
    row: (count, size, length, how) => `${count} de ${size}, ${length}, ${how}`,
    add: 'Poner en la camioneta',
    added: (count, size, length) => `${size}, ${length}: ahora ${count} en la camioneta.`,
  },
  yard: {
    title: 'Del proveedor',
    hint: (size) =>
      `Largos de ${size} que vende su proveedor, y lo que cuesta cada una. Deje vacío el precio si no lo sabe.`,
    none: (size) => `No hay ${size} en la lista: no se puede comprar ninguna.`,
    row: (size, length) => `${size}, ${length}`,
    add: 'Poner en la lista del proveedor',
    added: (size, length, price) => `${size}, ${length}: ${price}.`,
    noPrice: 'precio desconocido',
    others: (count) => `Otras medidas (${count})`,
  },
  remove: (what) => `Quitar ${what} de la lista`,
  removeShort: 'Quitar',
});
