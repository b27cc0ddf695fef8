import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type {
  boardColumns,
  boardCounts,
  boardFigures,
  boardFormulas,
  boardInputs,
  boardNotes,
  boardTables,
  boardTerms,
} from './boardsEn.ts';

interface BoardWords {
  readonly figures: typeof boardFigures;
  readonly formulas: typeof boardFormulas;
  readonly inputs: typeof boardInputs;
  readonly tables: typeof boardTables;
  readonly columns: typeof boardColumns;
  readonly counts: typeof boardCounts;
  readonly terms: typeof boardTerms;
  readonly notes: typeof boardNotes;
}

/** Words of the boards that the forms are cut from. */
export const boardsEs = ({ form }: TermsEs): BoardWords => ({
  figures: {
    'boards-bought': 'Tablas por comprar',
    'boards-money': 'Tablas, precio',
    'boards-length-bought': 'Tablas por comprar, largo',
    'boards-from-truck': 'Tablas de la camioneta',
    'board-cuts': 'Cortes',
    'board-splices': 'Empalmes',
    'board-cleats': 'Cubrejuntas',
    'boards-waste': `Tabla de más, aparte de la ${form.one}`,
    'boards-proof': 'Plan de las tablas',
  },
  formulas: {
    'boards-bought':
      'Tablas del proveedor de las que corta el plan, por largo. El plan mira primero el dinero gastado (o el largo comprado donde no se sabe un precio), luego los cortes, los empalmes y lo que sobra.',
    'boards-money': 'Tablas por comprar de cada largo por el precio de una.',
    'boards-length-bought': 'Tablas por comprar de cada largo por el largo de una.',
    'boards-from-truck': 'Tablas de la camioneta de las que corta el plan, por largo.',
    'board-cuts':
      'Cortes que sacan las piezas de cada tabla: uno por pieza, menos uno donde la última pieza toma todo lo que queda, pues puede pasarse de largo.',
    'board-splices':
      'Piezas menos tramos: cada pieza después de la primera de un tramo hace un empalme.',
    'board-cleats': 'Uno por empalme, del largo que dicen las prácticas.',
    'boards-waste':
      'Largo de las tablas usadas, menos lo que piden los tramos. Una parte se pasa de largo, otra sobra, un poco es aserrín.',
    'boards-proof':
      'Una primera respuesta es un buen plan hecho de inmediato. Comprobado: ningún plan es mejor en dinero, y de esos ninguno en cortes, luego en empalmes, luego en lo que sobra. No comprobado: la búsqueda se acabó antes de estar segura.',
  },
  inputs: {
    'boards-used': 'Largo de las tablas usadas',
    'boards-needed': 'Largo que piden los tramos',
    'saw-kerf': 'Corte de la sierra',
    'shortest-piece': 'Pieza más corta',
    'cleat-length': 'Largo de una cubrejunta',
    'proof-weighs': 'Lo que no se comprobó',
    'proof-have': 'Este plan tiene',
    'proof-bound': 'Ningún plan tiene menos de',
    'proof-seconds': 'Búsqueda, segundos',
  },
  tables: {
    'board-cut-list': 'Lista de cortes',
    'board-runs': 'Tablas por tramo',
    'board-buy': 'Tablas por comprar',
    'board-rests': 'Sobrantes que se guardan',
  },
  columns: {
    board: 'Tabla',
    'board-from': 'De',
    'board-length': 'Largo',
    'board-count': 'Cuántas',
    'board-piece': 'Pieza',
    'board-pieces': 'Piezas',
    'board-run': 'Tramo',
    'board-left': 'Sobra',
    'board-start': 'Inicio',
    'board-end': 'Final',
    'board-need': 'Pide',
    'board-price': 'Cada una',
    'board-sum': 'Suma',
  },
  counts: {
    board: { one: 'tabla', many: 'tablas' },
    'board-end': { one: 'punta', many: 'puntas' },
    'board-length': { one: 'largo', many: 'largos' },
    cleat: { one: 'cubrejunta', many: 'cubrejuntas' },
    cut: { one: 'corte', many: 'cortes' },
    splice: { one: 'empalme', many: 'empalmes' },
  },
  terms: {
    'board-truck': 'camioneta',
    'board-yard': 'proveedor',
    'end-passes': 'pasa',
    'end-butts': 'topa',
    'end-flat': 'a la esquina',
    'end-laps': 'traslapa',
    'end-stops': 'se detiene',
    'proof-first': 'primera respuesta',
    'proof-proved': 'el mejor, comprobado',
    'proof-gap': 'no comprobado',
    'weigh-price': 'dinero o largo comprado',
    'weigh-cuts': 'cortes',
    'weigh-splices': 'empalmes',
    'weigh-waste': 'lo que sobra',
  },
  notes: {
    'boards-none': `No hay {board} para cortar la ${form.one}. Ponga lo que trae la camioneta o lo que vende el proveedor, o escoja otra tabla de ${form.one}.`,
    'boards-row-wrong':
      'Un renglón de {board} en sus listas de tablas no puede ser: busque un largo o una cantidad mal escrita.',
    'boards-run-too-long':
      '{run} pide {need} de tabla en una sola pieza, y la {board} más larga es de {longest}. Permita empalmes en las prácticas, o ponga una tabla más larga.',
    'boards-run-no-splice':
      '{run} pide {need} de tabla, la {board} más larga es de {longest}, y no hay lugar donde un empalme pueda tener estaca a cada lado. Ponga una tabla más larga, o despeje el terreno.',
    'boards-not-enough':
      'No se halló cómo poner tabla en {runs} con la {board} de la camioneta; puede que no alcance. Ponga lo que vende el proveedor, o más tablas.',
    'boards-corner-tight': `No hay lugar después de {corners} para que pase ninguna tabla de ${form.one}: las dos terminan ahí. Refuerce la esquina por fuera, y revise que cierre.`,
    'boards-stop': `En {ends} la tabla de ${form.one} se detiene contra lo que ya está, sin {least} de costado donde traslapar. Refuércela ahí, y cierre el hueco.`,
    'boards-twisted-used':
      'Se usan tablas torcidas: {marks}. La regla corre sobre el canto de arriba: póngalas donde nada corre, o saque primero un canto derecho con la sierra.',
    'boards-run-short':
      'Muy cortos para llevar tabla propia: {runs}. Los cierran las tablas de los lados; revise que así sea.',
    'boards-pass': `Las tablas de ${form.one} van por fuera de la línea. Yendo alrededor con el concreto a la izquierda, cada una pasa la esquina en su final y topa en su inicio, salvo que no haya lugar; la lista de tablas lo dice. Una tabla puede pasarse hasta {runLong} de su esquina, donde el terreno esté libre. Un corte de sierra toma {kerf}.`,
    'boards-lapped': `En {ends} la tabla de ${form.one} se traslapa sobre el costado de lo que ya está, {lapOn} o lo que quepa.`,
    'boards-spliced':
      'Cada empalme lleva una cubrejunta de {cleat} y una estaca a cada lado. Va solo donde se pueden clavar las dos.',
    'boards-twisted-left':
      'No se usan, por torcidas: {boards}. La regla corre sobre el canto de arriba.',
    'boards-rip':
      '{boards} de las que hay que comprar pueden sacarse a {board} de otras más altas de la camioneta, cortándolas a lo largo. No se cuenta.',
    'boards-price-missing':
      'No hay suma de dinero: {rows} de {board} en la lista del proveedor no tienen precio, la más corta {first}. El plan compra el menor largo que puede.',
    'boards-curved': `La ${form.one} curva ({runs}) se dobla de material más delgado, no de las tablas de la lista: tablero duro de 1/4 in, o 1x con cortes de sierra en la cara de adentro, cortado al alto, {length} en total con 6 in de más en cada punta.`,
  },
});
