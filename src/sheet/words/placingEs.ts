import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type {
  placingColumns,
  placingCounts,
  placingFigures,
  placingFormulas,
  placingInputs,
  placingNotes,
  placingTables,
  placingTerms,
} from './placingEn.ts';

interface PlacingWords {
  readonly figures: typeof placingFigures;
  readonly formulas: typeof placingFormulas;
  readonly inputs: typeof placingInputs;
  readonly tables: typeof placingTables;
  readonly columns: typeof placingColumns;
  readonly counts: typeof placingCounts;
  readonly terms: typeof placingTerms;
  readonly notes: typeof placingNotes;
}

/**
 * Words of placing. For translators. Strip, franja: also faja. Screed board, regla: codal. Rail, guía: maestra. Wet screed,
 * maestra fresca. Struck off, enrasado: reglear. Float, flota: talocha, plana. Edger, volteador: orillador. Broom, escobillar.
 * Bulkhead, tapa: tope. Cold joint, junta fría. Kneeboard, tabla para hincarse.
 */
export const placingEs = ({ form, bag }: TermsEs): PlacingWords => ({
  figures: {
    'placing-batch': 'De una tanda a la otra',
    'placing-rate': 'Colado en una hora, entre todos',
    'placing-time': 'De la primera agua al último concreto',
    'first-set': 'El primer concreto fragua a',
    'open-edge': 'Orilla abierta más vieja',
    'edge-window': 'Una orilla puede quedar abierta',
    'finish-time': 'Todo escobillado a',
    'forms-off': `Quitar la ${form.one} a`,
    'screed-span': 'Su regla enrasa',
    'screed-strips': 'Franjas',
  },
  formulas: {
    'placing-batch':
      'El ciclo de la revolvedora, o el trabajo de manos de una tanda (en la revolvedora, acarrear, palear, enrasar) repartido entre todos: lo que sea más largo.',
    'placing-rate': 'El área que cubre una tanda, entre el tiempo de una tanda a la otra.',
    'placing-time':
      'Todas las tandas, una tras otra. Mientras se acaba una franja, en la revolvedora falta una persona.',
    'first-set': 'El fraguado inicial de la mezcla a 70 °F (21 °C), por el factor de hoy.',
    'open-edge':
      'Cuánto espera la orilla de una franja al concreto de la siguiente, visto a todo lo largo: más o menos el área de una franja entre lo que se cuela en una hora. Por lo menos de una tanda a la otra.',
    'edge-window':
      'Lo usual, menos con calor, nunca más con frío; y no más de lo que tarda la mezcla en fraguar.',
    'finish-time':
      'La última pasada de la última franja: flotada y volteada la orilla cuando ya está firme, con llana si se quiere, y luego escobillada. Primero las franjas de antes.',
    'forms-off': 'Horas después de la última pasada, más con frío.',
    'screed-span':
      'La regla disponible, menos lo que descansa en las guías en las dos puntas; solo, no más de lo que jala una persona.',
    'screed-strips':
      'El ancho del colado entre lo que enrasa la regla, redondeado hacia arriba; todas del mismo ancho.',
  },
  inputs: {
    crew: 'Gente',
    mixers: 'Revolvedoras',
    'mixer-cycle': 'Revolvedora, de una tanda a la otra',
    'barrow-load': 'Carga de la carretilla',
    'barrow-trips': 'Viajes de carretilla por tanda',
    'haul-distance': 'De la revolvedora al colado',
    'batch-covers': 'Una tanda cubre',
    'work-hauling': 'Acarrearla',
    'work-placing': 'Palearla y rastrillarla',
    'work-striking': 'Enrasarla',
    'work-all': 'Todo el trabajo de manos de una tanda',
    'blend-initial': 'Fraguado inicial a 70 °F (21 °C)',
    'window-usual': 'Lo usual que queda abierta una orilla',
    'screed-board': 'Regla',
    'screed-bearing': 'De ella sobre las guías',
    'solo-most': 'Una persona sola, a lo más',
    'strip-width': 'Franja, ancho',
    'strip-length-pulled': 'Franja, largo',
    'strip-hours': `La ${form.one} se queda`,
  },
  tables: {
    'placing-strips': 'Franjas, desde la primera agua',
    'placing-offers': 'Qué ayudaría',
  },
  columns: {
    'strip-wide': 'Ancho',
    'strip-rides': 'La regla corre sobre',
    'strip-batches': 'Tandas',
    'strip-placed': 'Colada',
    'strip-float': 'Flota',
    'strip-done': 'Escobillada',
    offer: 'Cambio',
    'offer-placed': 'Último concreto',
    'offer-edge': 'Orilla más vieja',
    'offer-works': '¿Basta?',
  },
  counts: {
    strip: { one: 'franja', many: 'franjas' },
    hand: { one: 'persona', many: 'personas' },
    mixer: { one: 'revolvedora', many: 'revolvedoras' },
    trip: { one: 'viaje', many: 'viajes' },
  },
  terms: {
    'ride-form': form.one,
    'ride-old-slab': 'losa vieja',
    'ride-steps': 'escalones',
    'ride-rail': 'guía',
    'ride-wet-screed': 'maestra fresca',
    'offer-hands': 'Más gente',
    'offer-mixer': 'Otra revolvedora, y más gente',
    'offer-narrow': 'Franjas más angostas',
    'offer-mix': 'Una mezcla más lenta, sola',
    'offer-water': 'Agua fría',
    'offer-bulkhead': 'Tapa, un día para cada parte',
    'offer-truck': 'Un camión, la misma gente',
    'offer-enough': 'basta',
    'offer-helps': 'ayuda, no basta',
  },
  notes: {
    'screed-board-short':
      'Una regla de {board} con {bearing} sobre las guías no enrasa nada. Ponga en las prácticas la regla que tiene.',
    'placing-rates-wrong':
      'El colado no se puede medir en tiempo: gente, revolvedoras, carretilla y cada rendimiento deben ser más que nada. Póngalos en las prácticas.',
    'placing-no-batches':
      'El colado no se puede medir en tiempo mientras no se puedan contar las tandas. Ponga cuánto le cabe a la revolvedora.',
    'placing-too-many':
      'Esto lleva más tandas o franjas de las que se miden una por una. Revise la revolvedora y la regla, o pida concreto premezclado.',
    'placing-cold-joint':
      'La orilla de {strip} espera {age} al concreto que sigue; no debe esperar más de {window}. Eso hace una junta fría. Abajo está lo que ayudaría. Pare solo en una junta: derecha, de todo el espesor, contra una tapa.',
    'placing-sets-first':
      'El primer concreto fragua a {sets}, el último se cuela a {placed}: lo que ya está no se puede trabajar mientras usted sigue colando. Abajo está lo que ayudaría.',
    'placing-finish-late':
      'Franjas que se endurecen (a {final}) antes de quedar acabadas: {strips}. Más gente para acabar, o un colado más chico.',
    'placing-nothing-works':
      'Nada de lo que se probó basta por sí solo. Combínelo, o divida el colado en una junta y cuele en dos días.',
    'placing-alone':
      'Una persona sola deja parada la revolvedora mientras acaba una franja. Consiga otra persona, o cuele solo lo que una acaba.',
    'placing-no-way-out':
      'No hay salida de {strips}: ya colada, queda rodeada de paredes o concreto fresco. Deje por dónde salir: cuélela desde la otra punta, o camine en tablones sobre la orilla.',
    'placing-out-of-reach':
      'Hay partes del colado a {away} de donde alguien puede pararse; su mango alcanza {reach}. Tenga tablas para hincarse y un mango más largo, o cuélelo en dos.',
    'placing-edge-wall-first':
      '{length} de orilla van junto a una pared, a más de {reach} de donde puede pararse afuera. Voltee y acabe ese lado primero, desde el suelo de junto, antes de que quede encerrado; después solo con volteador de mango largo.',
    'screed-rails':
      'Su regla enrasa {span} a lo más: {strips}, con guías provisionales (tubo o 2x4 sobre estacas) entre ellas, puestas a la altura. Saque cada guía al colar la franja siguiente y rellene el hueco. Una regla que llegue de lado a lado no las necesita.',
    'screed-wet':
      'Una pared no le da a la regla sobre qué correr: {strips}. Haga ahí primero una maestra fresca: una faja de concreto a la altura, a lo largo de una línea de gis en la tira o en la pared. O jale a lo largo de la pared, entre guías.',
    'placing-rates':
      'Los tiempos son para {hands} a rendimientos comunes, sin descansos ni problemas. Mida sus primeras tandas y póngalas en las prácticas.',
    'placing-even': `Todo lo de la lista se toma como colado, parejo de espesor: si ${bag.theMany} sobran, se va más rápido.`,
    'placing-blend-fastest':
      'Una combinación se toma como que fragua igual que su mezcla más rápida: “{mix}”, {sets} a 70 °F (21 °C). Puede tardar más: haga una tanda de prueba.',
    'placing-from':
      'Empiece por la punta de donde es más difícil salir y trabaje hacia atrás, franja por franja, hasta donde pueda salir. Las flechas muestran hacia dónde se jala. El croquis no dice dónde está la revolvedora.',
    'placing-forms-off': `Quite la ${form.one} {after} después de la última pasada, si la orilla aguanta la uña sin marca. El curado sigue por días.`,
    'broom-across-fall':
      'Escobille a lo ancho de la caída, para que el zapato agarre y el agua corra. Las alturas no están puestas: tómelo a lo ancho del lado más largo.',
  },
});
