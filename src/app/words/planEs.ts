import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { planEn } from './planEn.ts';

/** Words of the board plan on the forms' ticket: how its search stands, and what to do with what is left over. */
export const planEs = ({ form }: TermsEs): typeof planEn => ({
  title: 'Plan de tablas',
  waiting: 'Primera respuesta. Se busca una mejor en cuanto haga una pausa.',
  searching: 'Primera respuesta; se busca una mejor…',
  better: 'Mejor que la primera respuesta; se sigue buscando…',
  first: 'El plan es la primera respuesta: no se sabe si otro cuesta menos, o lleva menos cortes.',
  proved: (seconds) =>
    `Comprobado en ${seconds} s: ningún plan compra por menos. A ese precio ninguno lleva menos cortes, luego menos empalmes, luego menos sobrantes.`,
  gap: {
    price: (seconds, most) =>
      `El mejor hallado en ${seconds} s, no comprobado: otro plan podría costar a lo más ${most} menos.`,
    length: (seconds, most) =>
      `El mejor hallado en ${seconds} s, no comprobado: otro plan podría comprar a lo más ${most} menos de tabla.`,
    cuts: (seconds, most) =>
      `El mejor hallado en ${seconds} s. Comprobado: ningún plan compra por menos. No comprobado: a ese precio otro podría ahorrar ${most} a lo más.`,
    splices: (seconds, most) =>
      `El mejor hallado en ${seconds} s. Comprobado: ningún plan compra por menos, ni lleva menos cortes a ese precio. No comprobado: otro podría ahorrar ${most} a lo más.`,
    waste: (seconds, most) =>
      `El mejor hallado en ${seconds} s. Comprobado: ningún plan compra por menos, ni lleva menos cortes o empalmes a ese precio. No comprobado: otro podría dejar a lo más ${most} menos de sobra.`,
  },
  stopped: 'Usted paró la búsqueda.',
  stuck: 'La búsqueda no acabó a su tiempo y se paró.',
  failed: (why) =>
    `La búsqueda de un mejor plan falló. Es error nuestro, o no bajaron sus archivos: ${why}`,
  stop: 'Dejarlo así',
  again: 'Buscar otra vez',
  leftovers: 'Poner los sobrantes en la camioneta',
  leftoversHint:
    'Para después del trabajo: quita de la lista de la camioneta las tablas que usa y pone lo que sobra. Un solo deshacer regresa la lista.',
  leftoversDone: `La lista de la camioneta está como quedará después de este trabajo, y este plan es de esa lista: volvería a cortar esta ${form.one}, de lo que queda. Deshacer regresa la lista.`,
});
