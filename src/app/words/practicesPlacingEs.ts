import type { practicesPlacingEn } from './practicesPlacingEn.ts';

/**
 * For translators: screed board, regla: codal. Barrow, carretilla. Bull float, llana de mango largo. Float, flota. Edger,
 * volteador. Broom, escobillar. Rail, guía: maestra.
 */
export const practicesPlacingEs: typeof practicesPlacingEn = {
  units: {
    celsius: '°C',
    fahrenheit: '°F',
    squareMetresAnHour: 'm²/h',
    squareFeetAnHour: 'ft²/h',
    cubicMetresAnHour: 'm³/h',
    cubicFeetAnHour: 'ft³/h',
    kgPerSquareMetreHour: 'kg/m²/h',
    poundsPerSquareFootHour: 'lb/ft²/h',
  },
  groups: {
    crew: 'Gente, revolvedora y carretilla',
    screed: 'Regla y alcance',
    finishing: 'Acabado',
    weatherRules: 'Clima, desde cuándo',
  },
  choices: {
    two: 'entre dos',
    one: 'por una persona',
    'strips-proposed': 'Propuestas: una si la regla alcanza, si no a lo ancho',
    'strips-across': 'A lo ancho, por el lado corto',
    'strips-along': 'A lo largo, por el lado largo',
  },
  fields: {
    crew: { label: 'Gente, contándose usted' },
    mixers: { label: 'Revolvedoras' },
    cycle: { label: 'De una tanda a la otra' },
    barrowLoad: { label: 'Carga de la carretilla, fresco' },
    haul: { label: 'De la revolvedora al medio del colado' },
    walking: { label: 'Lo que se camina en un minuto' },
    barrowTripLost: { label: 'Perdido en cada viaje' },
    placeRate: { label: 'Paleado y rastrillado, una persona' },
    strikeRate: { label: 'Enrasado y pasado con llana larga, una persona' },
    board: { label: 'Regla disponible' },
    boardBearing: { label: 'De ella sobre las guías, las dos puntas' },
    pulledBy: { label: 'Regla jalada' },
    soloMost: { label: 'Una persona sola, no más ancho de' },
    stripsRun: { label: 'Franjas' },
    handReach: { label: 'Alcance a mano' },
    poleReach: { label: 'Alcance con mango' },
    floatRate: { label: 'Flotado, una persona' },
    edgeRate: { label: 'Orilla volteada en una hora, una persona' },
    trowel: { label: 'Con llana después de la flota' },
    trowelRate: { label: 'Con llana, una persona' },
    broomRate: { label: 'Escobillado, una persona' },
    bleedShare: { label: 'Ya no hay agua de sangrado, del fraguado inicial' },
    floatShare: { label: 'Flotar desde, del fraguado inicial' },
    trowelShare: { label: 'Llana desde, del fraguado inicial' },
    edgeWindow: { label: 'Una orilla puede quedar abierta' },
    stripHours: { label: 'Los costados se quedan puestos' },
    evaporationMost: { label: 'Proteger la superficie desde' },
    evaporationLowBleed: { label: 'Mezclas que sangran poco, desde' },
    coldBelow: { label: 'Frío a menos de' },
    hotFrom: { label: 'Calor desde' },
    setShift: { label: 'Fragua más tarde por cada 10 °F (5.6 °C) más frío' },
    coolWater: { label: 'Agua fría que se consigue' },
    waterShare: { label: 'La mezcla sigue al agua en' },
  },
  notes: {
    cycle: {
      says: 'Unos 5 min para dos de 80 lb en una revolvedora chica: 24 por hora. Tres personas, con todo, hicieron 20 por hora en el día.',
      source: 'Páginas del oficio; práctica común.',
    },
    barrowLoad: {
      says: 'Concreto fresco: de 1 a 1 1/2 ft³ por lo general, 2 ft³ a lo más en un libro viejo; 3 ft³ pesan 450 lb y se derraman. Se caminan 200 ft por minuto y se pierden 3/4 de minuto por viaje.',
      source: 'Libro del oficio sobre costos del concreto (1908).',
    },
    rates: {
      says: 'Los rendimientos son de una persona, sin descansos. Los libros viejos dan a cuadrillas enteras de 150 a 175 ft² por hombre en nueve horas, mezclando a mano. Mida a su gente.',
      source: 'Práctica común, sin fuente.',
    },
    screedBoard: {
      says: 'Una regla derecha, como 2 ft más larga que de guía a guía. Véala de canto: una con panza deja la losa hundida.',
      source: 'Práctica común, sin fuente.',
    },
    stripsRun: {
      says: 'Las franjas cortas dejan poco tiempo abierta la orilla; las largas piden menos guías.',
      source: 'Práctica común, sin fuente.',
    },
    stages: {
      says: 'Flote cuando ya no hay agua de sangrado y la bota no deja huella de más de 1/4 in; nunca con agua encima. El reloj solo dice cuándo ir a ver.',
      source: 'Práctica común, de memoria.',
    },
    edgeWindow: {
      says: 'Un colado se mantiene dentro de una hora más o menos; un libro pide junta si el colado para más de 30 min. Menos con calor.',
      source: 'Páginas del oficio y un libro; no coinciden.',
    },
    stripHours: {
      says: 'Costados de 12 a 24 h, más con frío.',
      source: 'De memoria.',
    },
    evaporation: {
      says: '0.2 lb/ft²/h (1 kg/m²/h) en especificaciones; de 0.1 a 0.15 para mezclas que sangran poco.',
      source: 'Especificaciones públicas; las más bajas, de memoria.',
    },
    setShift: {
      says: 'Regla práctica: un tercio más por cada 10 °F más frío. Los cementos varían; también cambian el sol y el viento.',
      source: 'Práctica común, sin fuente.',
    },
    waterShare: {
      says: 'Agua 4° más fría enfría la mezcla como 1°.',
      source: 'De memoria.',
    },
  },
};
