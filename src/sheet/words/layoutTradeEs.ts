import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type {
  layoutColumns,
  layoutFigures,
  layoutFormulas,
  layoutInputs,
  layoutNotes,
  layoutTables,
  layoutTerms,
} from './layoutTradeEn.ts';

interface LayoutTradeWords {
  readonly figures: typeof layoutFigures;
  readonly formulas: typeof layoutFormulas;
  readonly inputs: typeof layoutInputs;
  readonly tables: typeof layoutTables;
  readonly columns: typeof layoutColumns;
  readonly terms: typeof layoutTerms;
  readonly notes: typeof layoutNotes;
}

/** Words of squaring and setting out. */
export const layoutTradeEs = ({ form }: TermsEs): LayoutTradeWords => ({
  figures: {
    'layout-band': 'Las diagonales pueden variar',
    'layout-tie-error': 'Peor esquina, cintas mal leídas',
    'layout-difference': 'Las diagonales varían',
    'layout-misclosure': 'Las cintas no coinciden por',
    'layout-move': 'El movimiento más largo',
    'layout-fit-misclosure': 'Las cintas no coinciden por',
    'layout-fit-move': 'El movimiento más largo',
  },
  formulas: {
    'layout-band':
      'Un cuarto de pulgada donde la diagonal más larga es de 20 ft o menos, que es práctica común; de ahí en proporción, que es regla nuestra.',
    'layout-tie-error':
      'Las dos cintas leídas con ± 1/8 in: el más lejano de los cuatro lugares donde entonces se cruzan los arcos, desde donde deben. Más o menos es el error de lectura entre el menor de seno y coseno de la mitad del ángulo de cruce.',
    'layout-difference':
      'Cuánto más larga es una diagonal medida que la otra, menos cuánto más larga está dibujada. Cada diagonal abajo: dibujada + lo que varía = medida.',
    'layout-misclosure':
      'Los lados deciden cuánto miden juntas las dos diagonales. Lo medido, menos eso, repartido entre las dos: más que un poco quiere decir una cinta mal leída o un lado que no mide lo suyo.',
    'layout-move':
      'Un lado se queda. Los otros tres giran con sus largos al único ángulo donde las diagonales difieren como se midió; de ahí al lugar dibujado es el movimiento. Calculado con los triángulos verdaderos, no con una regla al tanteo.',
    'layout-fit-misclosure': `La ${form.one} cuyos largos se acercan más a las cintas, todas con la misma confianza (mínimos cuadrados). Lo que la cinta más alejada dice de más o de menos. Cada cinta abajo: lo medido, o lo dibujado donde un lado no se midió, menos lo ajustado.`,
    'layout-fit-move': `Un lado se queda. De donde está cada esquina en la ${form.one} que más se acerca a las cintas (mínimos cuadrados), a donde se dibujó.`,
  },
  inputs: {
    'longest-diagonal': 'Diagonal más larga',
    'tape-reading': 'Una cinta se lee mal hasta por',
    'side-held': 'Lado que se queda',
  },
  tables: {
    'layout-ties': 'Lados y diagonales',
    'layout-squares': '3-4-5 en esquinas a escuadra',
    'layout-offsets': 'A escuadra desde la línea base',
    'layout-tape-ties': 'Medidas de cinta desde dos marcas',
    'layout-moves': 'Movimientos por hacer',
  },
  columns: {
    corner: 'Esquina',
    tie: 'De–a',
    'tie-kind': 'Qué es',
    'tie-use': 'Para qué',
    'leg-one': 'Por el lado siguiente',
    'leg-two': 'Por el lado anterior',
    'across-legs': 'Cruzado',
    station: 'A lo largo',
    offset: 'Hacia afuera',
    'station-exact': 'A lo largo, a 1/64',
    'offset-exact': 'Hacia afuera, a 1/64',
    'from-first': 'Desde M1',
    'from-second': 'Desde M2',
    'side-of-line': 'Lado',
    crossing: 'Cruce a',
    'tie-error': 'Puede variar',
    'move-along': 'A lo largo',
    'move-toward': 'Hacia',
    'move-square': 'A escuadra',
    'move-way': 'Sentido',
    'move-in-all': 'En total',
  },
  terms: {
    side: 'lado',
    chord: 'cuerda de la curva',
    between: 'a través del claro',
    diagonal: 'diagonal',
    sets: `fija la ${form.one}`,
    checks: 'para revisar',
    'sets-blocked': `fija la ${form.one}; algo estorba`,
    'checks-blocked': 'para revisar; algo estorba',
    left: 'izquierda',
    right: 'derecha',
    'in-line': 'en línea',
    'at-the-mark': 'en la marca',
    'no-fix': 'no se puede',
    away: 'lejos del lado',
    nearer: 'cerca del lado',
    stays: '–',
  },
  notes: {
    'layout-no-pour':
      'Todavía no hay nada que trazar: el colado no se puede calcular. Corrija primero lo que dice la boleta de arriba.',
    'layout-pad-gone': 'Esa plancha ya no está en el trabajo. Escoja otra para trazar.',
    'layout-few-corners': `Esta plancha tiene menos de dos esquinas con ${form.one}, así que no hay nada que trazar con cinta. Mida las puntas de la ${form.one} desde lo que tocan.`,
    'layout-many-corners': `Esta plancha tiene {corners} esquinas con ${form.one}; las medidas de cinta se calculan para {most} a lo más. Trácela con una cuadrícula de hilos, o divídala.`,
    'layout-baseline-gone':
      'La línea base escogida ya no está, o no es recta. Escoja otra línea desde la cual medir.',
    'layout-baseline-short':
      'La línea base escogida no tiene largo. Mueva una de sus puntas, o escoja otra línea.',
    'layout-mark-gone':
      'Una marca escogida ya no está. Escoja otra esquina donde enganchar la cinta.',
    'layout-marks-coincide': 'Las dos marcas son el mismo lugar. Escoja dos que estén separadas.',
    'layout-no-marks':
      'No hay dos marcas desde las cuales medir. Dibuje lo que ya está ahí (una losa existente, una pared, escalones), o trace primero dos esquinas.',
    'tape-no-triangle':
      'Estas tres cintas no pueden hacer un triángulo: {tapes}. Una se leyó o se escribió mal; mídalas otra vez.',
    'tape-cannot-close': `Ninguna ${form.one} con estos lados tiene esas diagonales. Mida otra vez las dos diagonales y los cuatro lados, de esquina a esquina en la cara de adentro.`,
    'tape-misclosure':
      'Cada diagonal está {off} fuera de lo que permiten estos lados, así que no se da movimiento: podría estar mal. Mida otra vez las dos diagonales, luego los cuatro lados.',
    'tape-more-needed': `Estas cintas todavía dejan una esquina libre. Mida más cruzadas: {tapes}. Las que fijan la ${form.one} están en la tabla.`,
    'tape-fit-none': `Ninguna ${form.one} parecida a la dibujada tiene estos largos, así que no se da movimiento. Busque una cinta mal leída o mal escrita.`,
    'tape-fit-misclosure':
      'Las cintas no coinciden: {tape} está {off} fuera de lo que le dejan las otras, así que no se da movimiento. Mídala otra vez, luego las vecinas.',
    'layout-ties-flat':
      'Los dos arcos se cruzan muy planos en {corners} (menos de 30° o más de 150°): un pequeño error de cinta mueve mucho la esquina. Escoja otras marcas, o mida a escuadra desde la línea base.',
    'layout-tie-blocked':
      'Hay una pared o escalones entre una marca y {corners}: la cinta no se puede estirar ahí. Escoja otras marcas, o mida a escuadra desde la línea base.',
    'tape-out-of-band':
      'Fuera de escuadra: las diagonales varían {off}, más de {band} que se deja pasar. Haga los movimientos de abajo, luego mida otra vez.',
    'tape-sides-off':
      'Un lado está {off} fuera de su largo. Corrija los lados antes que las diagonales; los movimientos de abajo ya lo cuentan.',
    'tape-sides-unmeasured': `Diagonales iguales no bastan: una ${form.one} con dos puntas sesgadas también las tiene. Mida también los cuatro lados.`,
    'tape-fit-off':
      'Una esquina está a {off} de su lugar, más de {band} que se deja pasar. Haga los movimientos de abajo, luego mida otra vez.',
    'tape-fit-unchecked':
      'Nada revisa estas cintas: una mal leída mueve una esquina y no se nota. Mida una más.',
    'layout-not-proof':
      'Diagonales iguales no prueban por sí solas un rectángulo. Los lados opuestos también deben ser iguales: mida con cinta todos los largos de la tabla.',
    'layout-one-baseline':
      'Una sola línea es la base. Las paredes y losas viejas rara vez son rectas o están a escuadra: mida las otras desde ella, en tres lugares por lo menos.',
    'layout-sides-left': `Las esquinas contra lo que ya está no aparecen en estas tablas: la ${form.one} termina donde lo toca.`,
    'layout-pick-side':
      'Dos arcos se cruzan a los dos lados de la línea entre las marcas. “Izquierda” y “derecha” se ven desde M1 mirando a M2.',
    'tape-within-band':
      'Las diagonales varían {off}, dentro de {band} que se deja pasar. Bastante a escuadra, si los lados opuestos también son iguales.',
    'tape-fit-within': 'Cada esquina está a menos de {off} de su lugar; se deja pasar {band}.',
    'tape-sides-held': 'Los lados que no se midieron se toman del largo dibujado.',
  },
});
