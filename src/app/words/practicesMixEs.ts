import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { practicesMixEn } from './practicesMixEn.ts';

/** What the allowance, the mixer and the bags are, in words. Initial and final set: fraguado inicial y final. */
export const practicesMixEs = ({ bag }: TermsEs): typeof practicesMixEn => ({
  choices: {
    parts: 'Partes con nombre',
    share: 'Una parte del neto',
  },
  fields: {
    wasteBy: { label: 'El margen se hace de' },
    wasteShare: { label: 'Margen' },
    depthSpread: { label: 'El espesor promedio puede fallar por' },
    spreadTimes: { label: 'Prever eso, veces' },
    spillage: { label: 'Se tira y queda en la revolvedora' },
    minimumBags: { label: `Margen, por lo menos est${bag.end}s ${bag.many}` },
    halfBags: { label: `Pueden entrar medi${bag.end}s ${bag.many} en una tanda` },
  },
  notes: {
    wasteBy: {
      says: 'Un porcentaje esconde para qué es. Las partes con nombre lo dicen: lo que puede fallar el suelo, lo que se tira, lo que usted agrega a mano. Cada una se toma del puro neto; los huecos ya están descontados y no se vuelven a prever.',
      source: 'Práctica común, sin fuente.',
    },
    depthSpread: {
      says: 'Mientras no se tomen lecturas. 1/4 in de espesor promedio es 7 % de una losa de 3 1/2 in, y nadie lo ve. Las lecturas del suelo toman su lugar.',
      source: 'Práctica común, sin fuente.',
    },
    spreadTimes: {
      says: 'Una vez alcanza cinco de cada seis veces; dos, casi siempre. 0 deja el suelo a la suerte.',
      source: 'Estadística de un promedio; cuántas veces lo decide usted.',
    },
    spillage: {
      says: 'Con cuadrillas cuidadosas se ve de 1 a 2 %; dos carretillas de un colado grande, menos de 1 %.',
      source: 'Práctica común, sin fuente.',
    },
    minimumBags: {
      says: `En un trabajo chico una parte es menos que ${bag.a}: 5 % de ocho es la mitad. Lo común es tener dos de más a la mano.`,
      source: 'Práctica común, sin fuente.',
    },
    halfBags: {
      says: 'Una mitad a ojo falla por una cuarta parte, y el agua con ella: pésela. Abierta, la otra mitad no dura más de un día.',
      source: 'Práctica común, sin fuente.',
    },
  },
  mix: {
    water: { least: `Agua para ${bag.a}, mínimo`, most: `Agua para ${bag.a}, máximo` },
    waterUnknown: `No se sabe. Ponga lo que dice ${bag.the}, como 3 qt o 2.8 L.`,
    set: { initial: 'Fraguado inicial, a unos 70 °F (21 °C)', final: 'Fraguado final' },
    setCommon: `Tiempos como se dicen comúnmente de una mezcla así. Ponga lo que dice ${bag.the} o su hoja de datos.`,
    setIsBag: `${bag.the.charAt(0).toUpperCase()}${bag.the.slice(1)} dice lo mismo`,
    quarters: 'Escriba las partes en cuartos, como 2, 1 1/2 o 0.75.',
    minutes: 'Escriba un tiempo como 30 min, 4 h o 4 h 30.',
    extras: 'Agregado al margen a mano',
    extraName: 'Para qué',
    extraVolume: 'Concreto',
    extraNameNeeded: 'Escriba para qué es.',
    addExtra: 'Agregar una parte',
    newExtra: 'Suelo flojo',
    removeExtra: (name) => `Quitar ${name}`,
  },
});
