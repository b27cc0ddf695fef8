import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type {
  stakeColumns,
  stakeFigures,
  stakeFormulas,
  stakeInputs,
  stakeNotes,
  stakeTables,
  stakeTerms,
} from './stakesEn.ts';

interface StakeWords {
  readonly figures: typeof stakeFigures;
  readonly formulas: typeof stakeFormulas;
  readonly inputs: typeof stakeInputs;
  readonly tables: typeof stakeTables;
  readonly columns: typeof stakeColumns;
  readonly terms: typeof stakeTerms;
  readonly notes: typeof stakeNotes;
}

/** Words of stakes, of what holds a form besides, and of what fastens it. */
export const stakesEs = ({ form, bag }: TermsEs): StakeWords => ({
  figures: {
    'stake-spacing-used': 'Estacas, separación máxima',
    stakes: 'Estacas',
    'stakes-inside': `Estacas dentro de la ${form.one}, se sacan`,
    kickers: 'Pies de amigo',
    spreaders: 'Separadores',
    weights: 'Lugares sujetos con peso',
    cleats: 'Cubrejuntas en empalmes',
    nails: 'Clavos o tornillos',
    'nail-weight': 'Clavos, peso',
    'fastening-boxes': 'Cajas de clavos o tornillos',
  },
  formulas: {
    'stake-spacing-used':
      'La menor de cuatro: su práctica (s₀), y lo que aguanta la tabla cuando el concreto fresco la empuja de lado como un líquido (q): esfuerzo de flexión (F), panza (δ), y panza como parte (r) de la separación. La tabla se dobla por lo plano, en su eje débil (d de alto, t de grueso), sobre tres claros o más.',
    stakes:
      'Por cada tramo: su largo menos la distancia de las dos puntas, entre la separación, redondeado hacia arriba, y una más. Con las agregadas (a) por empalmes, por estacas puestas a mano, y donde algo estorba y no se pueden clavar parejas, para que ninguna separación pase de la máxima; menos aquellas (b) donde otra cosa sujeta, y las quitadas a mano.',
    'stakes-inside': `Lugares donde no se puede clavar detrás de la ${form.one}, pero sí delante: se sacan cuando el concreto va endureciendo, y se tapa el hoyo.`,
    kickers: `Refuerzos a una estaca más afuera: donde no se puede clavar justo detrás de la ${form.one}, y en cada estaca donde queda más alta que su límite. Cada uno lleva una estaca más.`,
    spreaders: `Lugares donde la ${form.one} se separa de una pared, escalones, losa u otra ${form.one} con un puntal o una cuña.`,
    weights: `Lugares donde no cabe estaca ni puntal: ${bag.many} o bloques contra la ${form.one}.`,
    cleats: 'Una sobre cada empalme.',
    nails: `Tantos por cada estaca (n), detrás de la ${form.one} o adentro; los mismos en cada punta de un pie de amigo (j); y los de cada esquina donde se juntan dos tablas (m) y de cada cubrejunta (p).`,
    'nail-weight': 'Clavos entre los clavos que trae una libra.',
    'fastening-boxes': 'Redondeado hacia arriba a cajas enteras.',
  },
  inputs: {
    'stake-spacing': 'Separación de estacas por práctica, máxima',
    'stake-from-end': 'Primera y última estaca desde las puntas, máximo',
    'spacing-by-deflection': 'Separación por lo que se pandea la tabla',
    'spacing-by-share': 'Separación por panza como parte de ella',
    'spacing-by-bending': 'Separación por esfuerzo de flexión',
    'spacing-governed-by': 'Lo que manda',
    'board-thickness': 'Grueso real de la tabla',
    'fresh-weight': 'El concreto fresco pesa',
    'form-pressure': 'El concreto empuja al pie de la tabla con',
    'form-thrust': `Empuje sobre la ${form.one}`,
    'deflection-most': 'Panza de la tabla, máxima',
    'deflection-share': 'La separación es tantas veces la panza, por lo menos',
    elasticity: 'Módulo de elasticidad de la tabla',
    'bending-stress': 'Esfuerzo de flexión que aguanta la tabla',
    'kickers-above': `Pies de amigo donde la ${form.one} queda más alta que`,
    'kickers-high': `Estacas con refuerzo por lo alto de la ${form.one}`,
    'kickers-beyond': 'Lugares con la estaca más allá de lo que estorba',
    'nails-per-stake': 'Clavos o tornillos por estaca',
    'nails-per-corner': 'Clavos o tornillos por esquina',
    'nails-per-cleat': 'Clavos o tornillos por cubrejunta',
    'nails-per-pound': 'Clavos en una libra',
    'nail-box': 'Una caja trae',
    'screws-per-box': 'Tornillos en una caja',
  },
  tables: { 'stake-list': 'Lista de estacas' },
  columns: {
    'most-apart': 'Máximo',
    'stake-from': 'Desde',
    'stake-along': 'A lo largo',
    'stake-side': 'Lado',
    'stake-kind': 'Qué es',
  },
  terms: {
    'by-practice': 'su práctica',
    'by-deflection': 'lo que se pandea la tabla',
    'by-deflection-share': 'panza como parte de la separación',
    'by-bending': 'esfuerzo de flexión',
    'run-start': 'inicio del tramo',
    'outside-form': 'por fuera',
    'inside-form': 'por dentro',
    stake: 'estaca',
    'stake-by-hand': 'estaca, puesta a mano',
    'stake-and-kicker': 'estaca y pie de amigo',
    'inside-stake': 'estaca por dentro',
    'kicker-alone': 'pie de amigo',
    spreader: 'separador',
    weight: 'peso',
  },
  notes: {
    'stake-spacing-zero':
      'Las estacas no se pueden contar: la separación debe ser más que nada, y la distancia desde las puntas no menos. Póngalas en las prácticas.',
    'curve-spacing-zero':
      'Las estacas en curvas no se pueden poner: su separación, y cuánto puede salirse la tabla del arco, deben ser más que nada. Póngalas en las prácticas.',
    'board-bears-nothing':
      'Las estacas no se pueden separar: lo que aguanta la tabla, cuánto puede pandearse y lo que pesa el concreto fresco deben ser más que nada, y dejar alguna separación. Póngalos en las prácticas.',
    'utility-tolerance-below-zero':
      'Las estacas no se pueden poner: la distancia a las líneas enterradas no puede ser menos que nada. Póngala en las prácticas.',
    'nails-per-pound-zero':
      'Los clavos no se pueden pesar: cuente cuántos trae una libra de su caja, y póngalo en las prácticas junto con lo que pesa una caja.',
    'screws-per-box-zero':
      'Los tornillos no se pueden contar por cajas: ponga en las prácticas cuántos trae una.',
    'stakes-too-many':
      'Con esta separación harían falta {stakes}. Busque una separación mal escrita.',
    'call-before-digging':
      'Haga marcar las líneas enterradas antes de clavar una estaca. En EE. UU. llame al 811, con unos días de tiempo; es gratis. Cerca de las marcas cave a mano.',
    'dig-by-hand': `Una línea enterrada pasa cerca de la ${form.one}. No se pone ninguna estaca a menos de {tolerance} de ella a cada lado. Llame antes de cavar; dentro de esa distancia cave a mano, y no confíe en la marca para la profundidad. La distancia de su estado puede ser otra: pregunte.`,
    'driving-stakes':
      'Al clavar estacas: use protección en los ojos, y que nadie detenga con la mano una estaca bajo el marro. Tape las puntas de acero: pueden atravesar a una persona.',
    'hold-spreaders': `{places} en {runs}, porque ahí no se puede clavar estaca detrás de la ${form.one}: corte un puntal o cuña entre la ${form.one} y lo que está enfrente, y clávelo para que no se caiga.`,
    'hold-kickers': `{places} en {runs}, porque ahí no se puede clavar estaca justo detrás de la ${form.one}: clave una estaca más allá de lo que estorba, y refuerce la ${form.one} contra ella.`,
    'hold-inside': `{places} dentro de la ${form.one} en {runs}, porque detrás no se puede clavar: sáquelas cuando el concreto va endureciendo, y tape los hoyos.`,
    'hold-weights': `{places} en {runs}, porque ahí no cabe estaca ni puntal: sujete la ${form.one} con ${bag.many} o bloques, y revísela antes de colar. Puede correrse.`,
    'kickers-high': `La ${form.one} queda a {height} de alto, más de {above}: {kickers}, uno en cada estaca. Hay quien pone las estacas más juntas, y refuerza una sí y una no.`,
    'broken-spacing':
      'Las estacas están a {found} en {runs}, donde el máximo es {allowed}: una se quitó a mano. Ponga una en medio, o refuerce la tabla ahí.',
    'broken-from-end':
      'La estaca más cercana está a {found} de una punta en {runs}, donde el máximo es {allowed}: una se quitó a mano. Vuelva a ponerla, o refuerce la punta.',
    'broken-splice':
      'La estaca más cercana está a {found} de un lado de un empalme en {runs}, donde el máximo es {allowed}. Mueva el empalme, o refuerce las dos tablas en él.',
    'broken-blocked':
      'Hay una estaca puesta a mano en {runs} donde no se debe clavar: su centro está a {found} de lo que estorba, y el mínimo es {allowed}. Muévala, o deje que el plan la ponga.',
    'hand-stakes-off': `{stakes} puestas a mano ya no están sobre ninguna ${form.one}: el croquis cambió. Póngalas de nuevo, o deje que el plan las ponga.`,
    'stakes-at-ends':
      'Estacas a no más de {spacing}, con una a no más de {fromEnd} de cada punta de un tramo y a cada lado de todo empalme. Una esquina la sujetan dos, una en cada tabla. Donde algo estorba las estacas se corren a un lado y otro, y solo se agregan donde la separación quedaría muy grande.',
    'stakes-on-curves':
      'En curvas las estacas van a no más de {spacing}, y más juntas donde la tabla se saldría más de {flat} del arco.',
    'stakes-by-practice': `La separación es práctica, no cálculo. El puro concreto fresco dejaría a una {board} llegar a {calculated}; a {spacing} la pandea {bow} entre dos estacas, donde un golpe de 150 lb, un pie o la punta de la regla, la pandea {knocked}. La práctica la fijan los golpes, los pies sobre la ${form.one} y las estacas que ceden, no el empuje del concreto.`,
    'stakes-by-bending':
      'Su práctica de {practice} es más de lo que aguanta la tabla: una {board} llega a {calculated} con concreto fresco, y eso se usa. A {spacing} un golpe de 150 lb entre dos estacas la pandea {knocked}.',
  },
});
