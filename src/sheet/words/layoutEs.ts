import type { TermsEs } from '../../drawing/words/termsEs.ts';
import { formsSheetEs } from './formsSheetEs.ts';
import type { LayoutWords } from './layout.ts';
import { orderSheetEs, proposalEs } from './orderSheetEs.ts';
import { pourSheetEs } from './pourSheetEs.ts';
import { sectionsSheetEs } from './sectionsSheetEs.ts';
import { steelSheetEs } from './steelSheetEs.ts';

/** Words of the printed sheet. */
export const layoutEs = (terms: TermsEs): LayoutWords => {
  const { form } = terms;
  return {
    sheet: 'Hoja de la cuadrilla',
    layout: 'Trazo',
    lists: 'Listas',
    page: (page, of) => `Página ${page} de ${of}`,
    noName: 'Trabajo sin nombre',
    scale: 'Escala',
    revision: 'Revisión',
    date: 'Fecha',
    drawnBy: 'Dibujó',
    replaces: (revision) => `reemplaza la ${revision}`,
    north: 'N',
    heightsNotSet: 'Niveles sin indicar: no se dibuja la caída.',
    heightsNotSetWhy:
      'En este trabajo no se indican niveles: la hoja no lleva caídas, niveles ni espesores por esquina. Lo de arriba se toma como un solo plano; dé la caída en la obra.',
    asBuilt: 'Como quedó',
    asBuiltIntro:
      'Todas las medidas del plano, con lugar para lo que se midió. La letra de adelante la señala en el plano.',
    asBuiltHeads: { what: 'Medida', between: 'Entre', drawn: 'En el plano' },
    onePage: 'Una página',
    keyFigures: 'Cantidades y compras',
    moreTaken: (count) =>
      `Lo que se da por hecho (${count}) está en la hoja completa: léalo antes de construir.`,
    units: {
      'feet-inches': 'Pies y pulgadas, a 1/16 in',
      'decimal-feet': 'Pies decimales',
      metric: 'Milímetros y metros como se marca',
    },
    sizes: `Medidas: cara de adentro de ${form.one}.`,
    figuresRule: 'Mandan las cifras: no mida en el papel.',
    sketchOnly: 'Croquis: falta toda medida que no cupo. Construya con la hoja de la cuadrilla.',
    edges: 'Orillas del colado',
    edgeKinds: {
      free: `Orilla libre: ${form.one}`,
      'existing-slab': 'Contra losa existente',
      wall: 'Contra pared',
      'wall-formed': `Pared, con ${form.one}`,
      steps: 'Contra escalones',
      'block-out': 'Hueco',
    },
    strip: 'Tira de aislamiento',
    ground: 'Terreno',
    materials: {
      'fresh-concrete': 'Concreto nuevo',
      'old-concrete': 'Losa existente',
      building: 'Edificio',
      steps: 'Escalones',
      patch: 'Parche, se cuela',
      'no-stake': 'Aquí sin estacas',
    },
    buried: 'Líneas enterradas',
    withinTolerance: (length) => `No clavar a ${length}`,
    key: 'Medidas por letra',
    keyMore: (more) => `${more} más en las páginas siguientes`,
    keyWhat: {
      edge: 'Orilla',
      overall: 'Total',
      bay: 'A lo largo',
      arc: 'Arco',
      diagonal: 'Diagonal',
      angle: 'Ángulo',
      'block-out': 'Hueco',
      name: '',
      corner: 'Esquina',
      board: 'Tabla',
      run: 'Tramo',
      'mesh-piece': 'Pieza',
      bars: 'Varillas',
      seam: 'Pasajuntas',
    },
    keyPlace: (x, y) => `a ${x} de ancho, ${y} de alto`,
    keyDatum:
      'Los lugares se miden desde la primera esquina de la plancha: a la derecha, luego hacia arriba de la página.',
    checkBar: '2 in (50.8 mm) a escala',
    withheld: 'Sin cifras: este croquis no se puede colar como está.',
    withheldWhy: 'Lo que hay que corregir está en la página siguiente, en “No deja seguir”.',
    noScale: (scale) => `${scale} ocupa demasiadas páginas de este papel; se dibujó más chico.`,
    part: (part, of) => `parte ${part} de ${of}`,
    matchLine: (letters, part) => `Línea de empalme ${letters}: parte ${part}`,
    matchShort: (letters, part) => `${letters}: parte ${part}`,
    keyPlan: 'Partes de este plano',
    overlap: (paper, ground) =>
      `Las partes se traslapan ${paper} en el papel, ${ground} en el terreno. Ponga una sobre otra las líneas de empalme de las mismas letras.`,
    notToScale: 'Más grande que cualquier escala en este papel: el plano se corta en su marco.',
    nothing: 'Todavía no hay nada dibujado.',
    materialList: 'Lista de materiales',
    howItGoes: 'Cómo va el colado',
    practices: 'Calculado con',
    roles: { net: 'neto', allowance: 'agregado', rounding: 'redondeo', order: '' },
    setOut: 'Escuadrar y trazar',
    setOutLetters: `Las esquinas llevan letra en un cuadro en el plano. Mida de esquina a esquina, en la cara de adentro de la ${form.one}.`,
    setOutFrom: (feature, zero, end) =>
      `Línea base: ${feature}. El cero es su esquina ${zero}; siga hacia su esquina ${end}, luego a escuadra hacia afuera.`,
    setOutMark: (mark, feature, letter) => `${mark}: ${feature}, su esquina ${letter}.`,
    measured: 'Medido',
    notes: 'Notas para la cuadrilla',
    code: {
      title: 'Abra este trabajo en un teléfono',
      says: 'Apunte la cámara aquí. Se abre una copia del trabajo como estaba cuando se imprimió; nada se guarda en un servidor.',
      correction: {
        M: 'Código QR, corrección de errores M: se puede perder cerca del 15 %.',
        L: 'Código QR, corrección de errores L: se puede perder cerca del 7 %. Manténgalo plano y limpio.',
      },
      none: {
        'too-large':
          'Este trabajo es demasiado grande para un código. Entréguelo como archivo de trabajo.',
        failed: 'Esta vez no se pudo hacer el código. Entregue el trabajo como archivo de trabajo.',
        'no-address':
          'Sin código: la página estaba abierta en una dirección que ningún otro aparato alcanza. Entregue el trabajo como archivo de trabajo.',
      },
    },
    forms: formsSheetEs(terms),
    pour: pourSheetEs(terms),
    steel: steelSheetEs,
    sections: sectionsSheetEs,
    order: orderSheetEs(terms),
    proposal: proposalEs,
    lettersMissing: 'Una letra que esta tipografía no tiene se imprime como “?”.',
  };
};
