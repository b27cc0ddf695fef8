import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type {
  mixColumns,
  mixCounts,
  mixFigureNames,
  mixFormulas,
  mixInputs,
  mixNotes,
  mixTables,
} from './mixEn.ts';

interface MixWords {
  readonly figures: typeof mixFigureNames;
  readonly formulas: typeof mixFormulas;
  readonly inputs: typeof mixInputs;
  readonly tables: typeof mixTables;
  readonly columns: typeof mixColumns;
  readonly counts: typeof mixCounts;
  readonly notes: typeof mixNotes;
}

/** Mezclas, tandas, margen y lecturas del suelo. */
export function mixEs({ form, bag }: TermsEs): MixWords {
  return {
    figures: {
      'ground-depth': 'Promedio de las lecturas del suelo',
      'ground-spread': 'El promedio puede fallar por',
      'allowance-share': 'Margen: parte del neto',
      'allowance-spread': 'Margen: variación del espesor',
      'allowance-spillage': 'Margen: lo que se tira y queda en la revolvedora',
      'allowance-extra': 'Margen: agregado a mano',
      'allowance-floor': `Margen: hasta el mínimo de ${bag.many}`,
      'batch-rounding': 'Para completar la última tanda',
      'open-rounding': `Queda en ${bag.many} abiert${bag.end}s`,
      'bags-expected': `${bag.Many} que lleva el puro neto`,
      'worst-volume': 'En el peor caso',
      'batch-full': 'En una tanda completa',
      'batch-weight': 'Una tanda completa, mojada',
      'water-least': 'Agua, mínimo',
      'water-most': 'Agua, máximo',
    },
    formulas: {
      'ground-depth':
        'Cada lectura por su peso, sumadas. Con lugar, una lectura pesa lo que el suelo más cercano a ella; si no, todas pesan igual.',
      'ground-spread':
        'Desviación estándar de las lecturas (por lo menos 1/8 in, lo más cerca que se mide la tierra), por la raíz de los cuadrados de sus pesos: el error estándar del promedio.',
      'allowance-share': 'Una parte del neto.',
      'allowance-spread':
        'Área neta por lo que puede fallar el espesor promedio, las veces que se puso.',
      'allowance-spillage': 'Una parte del neto, y de nada más.',
      'allowance-extra': 'Lo que se agregó a mano, cada cosa con su nombre.',
      'allowance-floor': `Lo que les falta a las otras partes para el mínimo de ${bag.many}.`,
      'batch-rounding': `Lo que dan las tandas, menos lo que dan ${bag.theMany} en las partes de la combinación. Solo se completa una última tanda a la que le faltaría una mezcla.`,
      'open-rounding': `Lo que dan ${bag.theMany} abiert${bag.end}s, menos lo que entra a la revolvedora.`,
      'bags-expected': `El menor número de ${bag.many} en las partes de la combinación que da el neto, sin agregar nada.`,
      'worst-volume':
        'El neto con dos veces la variación de su espesor, y las otras partes con nombre del margen.',
      'batch-full': 'Los juegos enteros de las partes que caben en la revolvedora.',
      'batch-weight': 'El concreto de una tanda completa por el peso del concreto fresco.',
      'water-least': `${bag.Many} de cada mezcla por el agua mínima de cada un${bag.end}.`,
      'water-most': `${bag.Many} de cada mezcla por el agua máxima de cada un${bag.end}.`,
    },
    inputs: {
      readings: 'Lecturas del suelo',
      'reading-deviation': 'Desviación estándar de una lectura',
      'depth-spread': 'El espesor promedio puede fallar por',
      'spread-times': 'Se prevé, veces',
      'worst-times': 'En el peor caso, veces',
      spillage: 'Se tira',
      'blend-made': `Dan ${bag.theMany} en las partes de la combinación`,
      'mixed-made': 'Dan todas las tandas',
      'mixed-bags': `${bag.Many} que entran a la revolvedora`,
      'batch-makes': 'Da una tanda completa',
      'bag-water-least': `Agua para ${bag.a}, mínimo`,
      'bag-water-most': `Agua para ${bag.a}, máximo`,
      'fresh-concrete': 'Concreto fresco',
    },
    tables: {
      'ground-readings': 'Lecturas del suelo',
      'batch-list': 'Tandas',
      checkpoints: 'Puntos de revisión',
    },
    columns: {
      reading: 'Lectura',
      depth: 'Espesor',
      'off-mean': 'Contra el promedio',
      'reading-weight': 'Peso',
      batch: 'Tanda',
      'bags-main': `${bag.Many}, mezcla principal`,
      'bags-other': `${bag.Many}, otra mezcla`,
      'batch-water-least': 'Agua desde',
      'batch-water-most': 'hasta',
      'batch-concrete': 'Da',
      'bags-so-far': `${bag.Many} hasta aquí`,
      'concrete-so-far': 'Hecho hasta aquí',
      placed: 'Lleno',
      'placed-area': 'Área',
      'placed-bags': `Lleva ${bag.many}`,
      'placed-bags-so-far': `${bag.Many} para entonces`,
      'placed-batches-so-far': 'Tandas para entonces',
    },
    counts: {
      reading: { one: 'lectura', many: 'lecturas' },
    },
    notes: {
      'readings-too-few':
        'El volumen se debe calcular con las lecturas del suelo, y hay menos de {least}. Tome más lecturas, o calcúlelo con el espesor.',
      'batch-too-small': `A la revolvedora le caben {size}, y ${bag.a} da {makes}: no cabe una tanda de ${bag.many} enter${bag.end}s. Ponga lo que le cabe ya mezclado, use ${bag.many} más chic${bag.end}s, o permita medi${bag.end}s ${bag.many}.`,
      'batch-below-half-bag': `A la revolvedora le caben {size}, y medi${bag.end} ${bag.one} da {makes}: ni eso cabe. Ponga lo que le cabe ya mezclado, o use ${bag.many} más chic${bag.end}s.`,
      'batch-below-set': `A la revolvedora le caben {size}, y estas partes en ${bag.many} enter${bag.end}s, {mainBags} de “{main}” y {otherBags} de “{other}”, dan {makes}. Permita medi${bag.end}s ${bag.many}, escoja partes que quepan, o use una revolvedora más grande.`,
      'batch-below-half-set': `A la revolvedora le caben {size}, y estas partes en medi${bag.end}s ${bag.many}, {mainBags} de “{main}” y {otherBags} de “{other}”, dan {makes}. Escoja partes que quepan, o use una revolvedora más grande.`,
      'readings-few':
        'Solo hay {readings} del suelo. Su variación es un cálculo a ojo: tome {good} o más, parejas por toda la losa.',
      'readings-need-middle':
        'Cuatro lecturas en las esquinas no dicen qué tan hondo está el centro: el promedio es {low} o {high} según corra el suelo entre ellas, con {difference} de diferencia. Tome una en el centro.',
      'readings-deeper':
        'Según las lecturas del suelo la losa tiene {mean} de espesor (más o menos {error}), no {thickness}: lleva {difference} más. Calcule con las lecturas, o suba el suelo.',
      'readings-shallower':
        'Según las lecturas del suelo la losa tiene solo {mean} de espesor (más o menos {error}), no {thickness}. Rebaje el suelo, o calcule con las lecturas: {difference} menos.',
      'water-unknown': `No se ha puesto el agua que lleva ${bag.a}. Según lo que se ve comúnmente (3 a 5 qt por 80 lb), est${bag.end}s ${bag.many} llevan de {least} a {most} en total: ¿hay manguera? Mezcle solo según lo que dice ${bag.the}.`,
      'batches-not-listed': 'Son más de {most}: no se listan una por una.',
      'depth-from-readings': `El volumen se calcula con {depth}, el promedio de {readings}, más o menos {error}. La ${form.one}, el acero y las juntas van con el espesor puesto.`,
      'allowance-by-parts':
        'El margen es la variación del espesor ({times} ×: {spread}), {spillage} del neto que se tira, y lo que se agregó a mano; por lo menos {bags}. Cada parte se toma del puro neto: nada se descuenta y se vuelve a agregar.',
      'blend-half-bags': `Combinado por ${bag.many}: {mainParts} de “{main}” por {otherParts} de “{other}”, lo más cerca que dan medi${bag.end}s ${bag.many}. Pese las mitades. Los fabricantes no responden por combinaciones: haga una prueba primero.`,
      'last-batch-filled':
        'A la última tanda le hubiera faltado una de las mezclas. Se completa con {more}, para que su concreto sea como el demás.',
      'half-bag-left': `Queda medi${bag.end} ${bag.one} de “{mix}” abiert${bag.end}. No se conserva, y no l${bag.end} reciben de vuelta.`,
      'water-by-bag': `Según ${bag.theMany}, todas las tandas llevan de {least} a {most} de agua; la herramienta y el curado llevan más. ¿Hay manguera? Empiece con lo mínimo, y no pase de lo máximo.`,
    },
  };
}
