import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { practicesFormsEn } from './practicesFormsEn.ts';

const COMMON = 'Práctica común, sin fuente.';
const OURS = 'Valor nuestro, sin fuente.';
const MEMORY = 'Práctica común, de memoria.';

/** What each practice of forms and stakes is, in words, and how far practitioners differ. */
export const practicesFormsEs = ({ form }: TermsEs): typeof practicesFormsEn => ({
  fields: {
    formBoard: { label: `Tabla de ${form.one}` },
    gapUnderForm: { label: `Espacio debajo de la ${form.one}` },
    stakeSpacing: { label: 'Separación de estacas, máxima' },
    stakeFromEnd: { label: 'Primera y última estaca a no más de' },
    curveSpacing: { label: 'Separación de estacas en curvas, máxima' },
    curveFlat: { label: 'Tabla fuera de la curva, máximo' },
    kickersAbove: { label: `Pies de amigo si la ${form.one} es más alta que` },
    utilityTolerance: { label: 'No clavar a menos de esto de una línea enterrada' },
    splices: { label: 'Un tramo puede empalmarse de varias tablas' },
    cleatLength: { label: 'Cubrejunta sobre un empalme' },
    runLong: { label: 'Una tabla puede pasarse de su esquina' },
    lapOn: { label: `${form.One} traslapada sobre losa vieja` },
    useTwisted: { label: 'Se pueden usar tablas torcidas' },
    kerf: { label: 'Corte de la sierra' },
    shortest: { label: 'Pieza más corta que vale cortar o guardar' },
    currency: { label: 'Signo de la moneda' },
    deflection: { label: 'Panza entre estacas, máxima' },
    deflectionShare: { label: 'Panza como parte de la separación, máxima' },
    elasticity: { label: 'Módulo de elasticidad de la tabla' },
    stress: { label: 'Esfuerzo de flexión que aguanta la tabla' },
    freshWeight: { label: 'Peso del concreto fresco' },
    fasteningBy: { label: `La ${form.one} se fija con` },
    perStake: { label: 'En cada estaca' },
    perCorner: { label: 'En cada esquina' },
    perCleat: { label: 'En cada cubrejunta' },
    nailBox: { label: 'Los clavos se venden en cajas de' },
    screwsPerBox: { label: 'Tornillos en una caja' },
    nailsPerPound: { label: 'Clavos de dos cabezas en una libra' },
  },
  notes: {
    gapUnderForm: {
      says: 'El alto de la tabla y el espacio juntos dan el espesor del colado. Ponga cero cuando la tabla se sienta en el suelo.',
      source: COMMON,
    },
    stakeSpacing: {
      says: `Se ve: 2 ft, 32 in bajando a 24 in con ${form.one} más alta, 3 ft, 3 a 4 ft. Más alto y suelo flojo las piden más juntas.`,
      source: 'Páginas y manuales publicados no coinciden; práctica común.',
    },
    stakeFromEnd: {
      says: 'Se ve: 6 a 12 in de cada punta, y una a cada lado de toda junta de dos tablas.',
      source: COMMON,
    },
    curveSpacing: {
      says: 'Una tabla doblada quiere enderezarse. Se ve: 18 in en curvas donde lo recto lleva 36.',
      source: COMMON,
    },
    curveFlat: {
      says: 'Entre estacas una tabla doblada va más recta que el arco dibujado. Entre más cerrada la curva, más juntas las estacas.',
      source: OURS,
    },
    kickersAbove: {
      says: `Se ve: una segunda estaca y una diagonal donde la ${form.one} sube más de 6 in del suelo; otros refuerzan todas las estacas, y apisonan tierra detrás.`,
      source: 'Un artículo publicado del oficio; las páginas no coinciden.',
    },
    utilityTolerance: {
      says: 'La zona va de 18 a 30 in a cada lado según el estado, contada desde fuera del tubo. Llame antes de cavar, espere las marcas, y cave a mano dentro de la zona. Manda la cifra de su centro de llamadas.',
      source: 'Práctica común; la ley de su estado.',
    },
    splices: {
      says: 'Hay quien nunca empalma la orilla que se ve. Un empalme quiere una cubrejunta detrás y una estaca a cada lado.',
      source: COMMON,
    },
    cleat: {
      says: 'Una tabla clavada sobre el empalme. Se ve: 2 ft por lo menos, y 4 ft.',
      source: COMMON,
    },
    runLong: {
      says: 'Una tabla que se pasa de su esquina no necesita corte, donde el terreno está libre. A nadie le importa, salvo al que se tropieza.',
      source: OURS,
    },
    lapOn: {
      says: `Donde la orilla libre llega a una losa vieja la ${form.one} sigue por el costado de la losa, para apretar contra él. Se queda corta donde no hay lugar.`,
      source: OURS,
    },
    twisted: {
      says: 'La regla corre sobre el canto de arriba: las tablas más derechas van en las orillas más largas y más vistas. Hay quien usa una torcida en un tramo corto entre estacas juntas.',
      source: COMMON,
    },
    kerf: {
      says: 'Lo que se lleva el disco: 1/8 in en la mayoría de las sierras circulares, menos con discos delgados. Mida un corte suyo.',
      source: COMMON,
    },
    shortest: {
      says: 'Se ve: 16 in es lo menos que vale una estaca. Hay quien guarda todo.',
      source: MEMORY,
    },
    deflection: {
      says: `Textos de ${form.many}: 1/16 in, y 1/360 de la separación. Cuenta la menor. En orillas bajas no manda ninguna: antes ceden las estacas que la tabla.`,
      source: `Textos de ${form.many}, de memoria.`,
    },
    deflectionShare: {
      says: 'Escríbala como 1/360. Otros toman 1/270 donde la orilla no se ve. Cuenta el menor de los dos límites.',
      source: `Textos de ${form.many}, de memoria.`,
    },
    elasticity: {
      says: 'La madera blanda va de 1.0 a 1.7 millones de psi, según especie y grado; mojada es más floja.',
      source: MEMORY,
    },
    stress: {
      says: 'Los grados van de menos de 500 a 1,500 psi. No es diseño estructural: solo evita que las estacas queden muy separadas.',
      source: MEMORY,
    },
    freshWeight: {
      says: 'Concreto común: 140 a 150 lb/ft³. En la orilla de una losa todo el espesor empuja como un líquido.',
      source: 'Manuales publicados: 150 lb/ft³.',
    },
    fastening: {
      says: 'Los clavos de dos cabezas salen con barra. Los tornillos salen sin golpes, y la estaca se vuelve a usar.',
      source: COMMON,
    },
    perStake: {
      says: `A través de la estaca en la ${form.one}. Lo usual son dos, para que la tabla no gire; hay quien pone uno en lo bajo.`,
      source: COMMON,
    },
    perCleat: {
      says: 'Lo usual son cuatro a cada lado del empalme.',
      source: COMMON,
    },
    nailBox: {
      says: 'Se venden en cajas de 1, 5 y más libras. La lista se redondea a cajas enteras.',
      source: COMMON,
    },
    nails: {
      says: 'La cuenta por libra cambia de caja a caja: 16d común 47 a 50, 8d 94 a 106. De dos cabezas: use la cuenta de su propia caja.',
      source: 'Tablas publicadas de clavos; los de dos cabezas: su caja.',
    },
  },
});
