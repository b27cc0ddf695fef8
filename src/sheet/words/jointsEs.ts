import type {
  jointColumns,
  jointCounts,
  jointFigures,
  jointFormulas,
  jointInputs,
  jointNotes,
  jointTables,
  jointTerms,
} from './jointsEn.ts';

interface JointWords {
  readonly figures: typeof jointFigures;
  readonly formulas: typeof jointFormulas;
  readonly inputs: typeof jointInputs;
  readonly tables: typeof jointTables;
  readonly columns: typeof jointColumns;
  readonly counts: typeof jointCounts;
  readonly terms: typeof jointTerms;
  readonly notes: typeof jointNotes;
}

/**
 * Words of joints. For translators. Panel, tablero: also paño, losa. Control joint, junta de control: also de contracción;
 * corte. Tooled, ranurada: con partidor. Isolation strip, tira de aislamiento: also de expansión. Sealant, sellador.
 * Backer rod, cordón de respaldo: also backer rod. Bulkhead, tapa: also tope, tapón.
 */
export const jointsEs: JointWords = {
  figures: {
    'panel-most': 'Tableros no más largos de',
    'joint-panels': 'Tableros',
    'joint-length': 'Juntas de control',
    'joint-stop-length': 'Juntas de construcción',
    'joint-proof': 'Este acomodo',
    'joint-depth': 'Juntas, hondo',
    'strip-length': 'Tira de aislamiento',
    'strip-depth': 'Tira, alto',
    'strip-pieces': 'Tira, piezas',
    sealant: 'Sellador',
    'sealant-cartridges': 'Sellador, cartuchos',
    'backer-length': 'Cordón de respaldo',
  },
  formulas: {
    'panel-most': 'Tantas veces el espesor, y nunca más del tope.',
    'joint-panels': 'Las partes en que las juntas dividen el colado, contadas.',
    'joint-length': 'Todas las juntas de control, sumadas.',
    'joint-stop-length': 'Todas las juntas donde para el colado, sumadas. De todo el espesor.',
    'joint-proof':
      'De todas las juntas que se pueden hacer con las líneas probadas, las más cortas que no rompen ninguna regla; si no hay, las que rompen menos. Comprobado cuando todas las demás son más largas o rompen más.',
    'joint-depth': 'Una parte del espesor, y no menos que lo mínimo.',
    'strip-length': 'Orillas que llevan tira según sus prácticas, sumadas.',
    'strip-depth': 'El espesor, menos lo que se deja baja la tira.',
    'strip-pieces': 'Largo de tira entre el largo de una pieza, redondeado hacia arriba.',
    sealant: 'Largo por ancho por hondo de lo que se sella. Sin desperdicio.',
    'sealant-cartridges': 'Sellador entre lo que trae un cartucho, redondeado hacia arriba.',
    'backer-length':
      'El largo de las juntas de control que se sellan. Un cordón una cuarta parte más grueso que la ranura se queda en ella.',
  },
  inputs: {
    'joint-factor': 'Veces el espesor',
    'joint-cap': 'Nunca más largos de',
    'joint-ratio': 'Largo entre ancho, a lo más',
    'joint-share': 'Parte del espesor',
    'joint-least-depth': 'Hondo mínimo',
    'joint-width': 'Ranura, ancho',
    'seal-depth': 'Sellador, hondo',
    'strip-thickness': 'Tira, grueso',
    'strip-recess': 'Tira más baja por',
    'strip-piece-length': 'Largo de una pieza de tira',
    'cartridge-holds': 'Trae un cartucho',
  },
  tables: {
    panels: 'Tableros',
    joints: 'Juntas',
    strips: 'Tira por orilla',
  },
  columns: {
    'panel-long': 'Largo',
    'panel-wide': 'Ancho',
    'panel-ratio': 'Razón',
    'panel-area': 'Área',
    'panel-says': 'Dictamen',
    'joint-from': 'De',
    'joint-to': 'A',
    'joint-by': 'Por',
  },
  counts: {
    panel: { one: 'tablero', many: 'tableros' },
    cartridge: { one: 'cartucho', many: 'cartuchos' },
    'joint-place': { one: 'lugar', many: 'lugares' },
  },
  terms: {
    'joints-first': 'acomodo rápido',
    'joints-proved': 'comprobado el más corto',
    'joints-gap': 'el mejor que se halló',
    'joints-by-hand': 'a mano',
    'joint-proposed': 'propuesta',
    'joint-hand': 'a mano',
    'panel-passes': 'pasa',
    'broken-too-long': 'muy largo',
    'broken-ratio': 'muy angosto para su largo',
    'broken-sliver': 'tirita',
    'broken-inside-corner': 'esquina interior sin junta',
    'broken-block-out': 'las juntas no llegan al hueco',
    'broken-old-joint': 'no sigue la junta vieja',
    'broken-sharp': 'esquina aguda',
    'broken-ends-on-joint': 'una junta acaba en otra',
    'broken-ends-inside': 'una junta acaba adentro',
  },
  notes: {
    'strip-piece-zero':
      'La tira no se puede contar en piezas: ponga el largo de una pieza en prácticas.',
    'strip-too-low':
      'Una tira más baja por {recess} en una losa de {thickness} no es tira. Ponga en prácticas cuánto más baja va.',
    'joints-rules-wrong':
      'No se pueden acomodar juntas: tableros no más largos de {most} ni más angostos de {least}. En prácticas, lo primero debe ser más que lo segundo, la razón 1 o más, y el ángulo de 0 a 90.',
    'joints-too-many':
      'Con tableros no más largos de {most} serían cientos. Busque en prácticas un número mal escrito.',
    'joint-too-deep':
      'Una junta de {depth} de hondo no es junta en una losa de {thickness}. Ponga lo hondo en prácticas: lo usual es la cuarta parte del espesor.',
    'sealant-wrong':
      'El sellador no se puede contar: su ancho y su hondo, el grueso de la tira y lo que trae un cartucho deben ser más que nada. Póngalos en prácticas.',
    'joint-broken-too-long':
      'Muy largos: {panels}. El más largo mide {found}; ninguno debe pasar de {allowed}.',
    'joint-broken-ratio':
      'Muy angostos para su largo: {panels}. El peor es {found} veces más largo que ancho; lo más es {allowed}.',
    'joint-broken-sliver':
      'Tiritas: {panels}. La más angosta mide {found} de ancho; lo que mide menos de {allowed} se quiebra.',
    'joint-broken-inside-corner':
      'Ninguna junta llega a una esquina interior ({places}: {panels}). Ahí la losa se agrieta casi siempre.',
    'joint-broken-block-out':
      'Las juntas no llegan a un hueco por dos lados ({places}: {panels}), en sus esquinas o en línea con su centro. De ahí se va a agrietar.',
    'joint-broken-old-joint':
      'No se sigue una junta de la losa vieja ({places}: {panels}). La grieta sigue en la nueva.',
    'joint-broken-sharp':
      'Esquinas agudas: {panels}. La más aguda es de {found}; una de menos de {allowed} se quiebra.',
    'joint-broken-ends-on-joint':
      'Una junta acaba en otra ({places}: {panels}). De ahí puede seguir una grieta: llévela hasta una orilla donde se pueda.',
    'joint-broken-ends-inside':
      'Una junta acaba adentro de un tablero ({places}: {panels}). De ahí sigue una grieta: llévela a una orilla o a otra junta.',
    'joint-outside':
      'Una junta dibujada no está en el colado. Muévala de orilla a orilla de la losa, o quítela.',
    'joint-existing-apart':
      'Una junta de la losa vieja no llega al colado, así que nada se alinea con ella. Dibújela hasta la orilla de la losa nueva.',
    'sealant-shallow':
      'El sellador y el cordón piden {needs}, pero la junta mide {depth} de hondo. Hágala más honda, o deje fuera el cordón.',
    'strip-not-sealed':
      'La tira al ras no deja lugar para sellador, así que no se cuenta sobre ella. Déjela baja, de 1/4 a 1/2 in, en prácticas.',
    'joints-rules-used':
      'Tableros no más largos de {most}, no más de {ratio} veces más largos que anchos, no más angostos de {least}: sus prácticas. Las curvas cuentan por sus cuerdas.',
    'joints-none-needed':
      'Por estas reglas no hace falta junta de control, o no se dibujó ninguna.',
    'joints-tooled-when':
      'Ranuradas: marque la ranura cuando ya no haya agua de sangrado y el concreto todavía ceda bajo el ranurador, y otra vez después de flotar. Cuánto tarda cambia con el calor, el viento, el sol y la mezcla.',
    'joints-sawn-when':
      'Cortadas: en cuanto la orilla del corte no se desmorone, antes de que se agriete sola. Se ve: de 4 a 12 h, de 6 a 18 h, de 8 a 24 h después de colar. Calor, viento, sol y mezclas rápidas la adelantan, el frío la atrasa: pruebe un corte chico. Corte con agua y con respirador: el polvo daña los pulmones para siempre.',
    'joints-stop':
      'En una junta de construcción el colado para contra una tapa, a escuadra y de todo el espesor. Su tabla y sus estacas no se cuentan.',
    'joints-may-crack':
      'Las juntas escogen dónde se agrieta la losa. Aun con buen acomodo, unos cuantos tableros de cada cien se agrietan en otra parte.',
    'strip-bonded':
      'Sin tira en un parche: ahí el concreto nuevo se pega al viejo. Limpie y raspe la orilla vieja, mójela, y siga las juntas de la losa vieja.',
    'strip-edges': 'La tira va en los tipos de orilla que se escogen en prácticas.',
    'strip-none':
      'Ninguna orilla lleva tira de aislamiento: no hay en este colado ninguna de las que se escogieron en prácticas.',
    'strip-butted':
      'La tira viene en piezas de {piece}, a tope una con otra, y las cortadas se vuelven a usar.',
  },
};
