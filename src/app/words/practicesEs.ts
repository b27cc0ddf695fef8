import type { TermsEs } from '../../drawing/words/termsEs.ts';
import { practicesEdgeEs } from './practicesEdgeEs.ts';
import type { practicesEn } from './practicesEn.ts';
import { practicesFormsEs } from './practicesFormsEs.ts';
import { practicesJointsEs } from './practicesJointsEs.ts';
import { practicesMixEs } from './practicesMixEs.ts';
import { practicesOrderEs } from './practicesOrderEs.ts';
import { practicesPlacingEs } from './practicesPlacingEs.ts';
import { practicesPourDayEs } from './practicesPourDayEs.ts';
import { practicesSteelEs } from './practicesSteelEs.ts';

/** What each practice is, in words, and how far practitioners differ. Sources are in words, for people. */
export function practicesEs(terms: TermsEs): typeof practicesEn {
  const { form, bag } = terms;
  const practicesEdge = practicesEdgeEs(terms);
  const practicesOrder = practicesOrderEs(terms);
  const practicesForms = practicesFormsEs(terms);
  const practicesMix = practicesMixEs(terms);
  const practicesPourDay = practicesPourDayEs(terms);
  return {
    title: 'Prácticas',
    intro: 'Sus propias reglas. Cada cantidad dice cuáles usó.',
    of: (place) => `Prácticas: ${place}`,
    range: (least, most) => `Debe ser de ${least} a ${most}.`,
    whole: 'Debe ser un número entero.',
    differs: 'Cómo lo hacen otros',
    takeFormDepth: (depth) => `Usar el espesor de la ${form.one}, ${depth}`,
    depthDiffers: (thickness, depth) =>
      `La tabla y el espacio debajo dan ${depth}; el volumen se calcula a ${thickness}.`,
    units: {
      plain: '',
      ...practicesJointsEs.units,
      ...practicesPourDay.units,
      ...practicesOrder.units,
      ...practicesPlacingEs.units,
      psi: 'psi',
      megapascals: 'MPa',
      millionPsi: 'millones de psi',
      gigapascals: 'GPa',
      poundsPerCubicFoot: 'lb/ft³',
      kgPerCubicMetre: 'kg/m³',
      poundsPer100: 'lb por 100 ft²',
      kgPerSquareMetre: 'kg/m²',
    },
    groups: {
      boards: 'Tablas',
      edge: 'Orilla y base',
      stakes: 'Estacas',
      bearing: 'Lo que aguanta la tabla',
      fastening: 'Clavos o tornillos',
      ...practicesOrder.groups,
      ...practicesPlacingEs.groups,
    },
    choices: {
      'duplex-nails': 'Clavos de dos cabezas',
      screws: 'Tornillos',
      ...practicesJointsEs.choices,
      ...practicesSteelEs.choices,
      ...practicesMix.choices,
      ...practicesOrder.choices,
      ...practicesPlacingEs.choices,
    },
    sign: 'Escriba solo el signo, como $: cuatro letras a lo más, sin dígitos.',
    fields: {
      thickness: { label: 'Espesor' },
      closeEnough: { label: 'Lo bastante cerca' },
      ...practicesEdge.fields,
      ...practicesForms.fields,
      ...practicesJointsEs.fields,
      ...practicesSteelEs.fields,
      ...practicesPourDay.fields,
      ...practicesOrder.fields,
      ...practicesPlacingEs.fields,
      mixName: { label: 'Mezcla' },
      bagWeight: { label: `Peso ${bag.of}` },
      bagYield: { label: `Rinde cada ${bag.one}` },
      mainMix: { label: 'Mezcla principal' },
      mainParts: { label: 'Partes de la principal' },
      otherMix: { label: 'Combinada con' },
      otherParts: { label: 'Partes de la otra' },
      batchVolume: { label: 'A la revolvedora le cabe, ya mezclado' },
      ...practicesMix.fields,
    },
    mix: practicesMix.mix,
    noOther: 'nada: una sola mezcla',
    addMix: 'Agregar una mezcla',
    removeMix: (name) => `Quitar ${name}`,
    mixInUse: 'La combinación usa esta mezcla. Escoja otra primero.',
    newMix: 'Otra mezcla',
    nameNeeded: `Escriba el nombre de la mezcla, como viene impreso en ${bag.the}.`,
    mixes: `Mezclas, como vienen impresas en sus ${bag.many}`,
    blend: 'Combinación',
    allowance: 'Margen',
    boards: {
      '1x4': '1×4 (3 1/2 in de alto)',
      '1x6': '1×6 (5 1/2 in de alto)',
      '2x4': '2×4 (3 1/2 in de alto)',
      '2x6': '2×6 (5 1/2 in de alto)',
      '2x8': '2×8 (7 1/4 in de alto)',
      '2x10': '2×10 (9 1/4 in de alto)',
      '2x12': '2×12 (11 1/4 in de alto)',
    },
    notes: {
      thickness: {
        says: '“4 pulgadas” muchas veces son 3 1/2: una 2×4 de canto mide 3 1/2 in de alto si no se levanta del suelo. Decida cuál, y la boleta muestra las dos.',
        source: 'Práctica común; las medidas de madera cepillada son de la norma.',
      },
      closeEnough: {
        says: 'Dos orillas más cercanas que esto se toman como una línea, porque dos lecturas de cinta de una orilla no coinciden. La tirita entre ellas se enlista, no se esconde.',
        source: 'Valor nuestro, sin fuente.',
      },
      ...practicesEdge.notes,
      ...practicesForms.notes,
      ...practicesJointsEs.notes,
      ...practicesSteelEs.notes,
      ...practicesMix.notes,
      ...practicesPourDay.notes,
      ...practicesOrder.notes,
      ...practicesPlacingEs.notes,
      bags: {
        says: `El rendimiento es lo que dice ${bag.the}: 80 lb da unos 0.60 ft³, 60 lb 0.45, 50 lb 0.375, 40 lb 0.30. Las páginas que prometen 2/3 ft³ se pasan 11 %.`,
        source: `Como viene impreso en ${bag.theMany} y en tablas publicadas.`,
      },
      waste: {
        says: `Se ve de 3 % sobre el terreno a 20 %: 5 % cimientos, 8 % losas, 10 % en un manual militar, 15 % y más de contratistas. En un trabajo chico una parte es menos que ${bag.a}, así que se usa lo mayor de la parte y una cuenta de ${bag.many}.`,
        source: 'Los manuales publicados no coinciden; es un ajuste, nunca parte del neto.',
      },
      batch: {
        says: 'Lo que le cabe a la olla ya mezclado, no el tamaño total de la olla.',
        source: 'Práctica común, sin fuente.',
      },
    },
  };
}
