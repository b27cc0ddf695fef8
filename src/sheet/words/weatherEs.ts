import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { weatherFigures, weatherFormulas, weatherInputs, weatherNotes } from './weatherEn.ts';

interface WeatherWords {
  readonly figures: typeof weatherFigures;
  readonly formulas: typeof weatherFormulas;
  readonly inputs: typeof weatherInputs;
  readonly notes: typeof weatherNotes;
}

/** Words of the weather. For translators. Bleed, sangrar. Frost, helada. Windbreak, rompevientos. Evaporation, evaporación. */
export const weatherEs = ({ bag }: TermsEs): WeatherWords => ({
  figures: {
    evaporation: 'Agua que pierde la superficie',
    'set-factor': 'Tiempos de fraguado, contra los de 70 °F (21 °C), por',
  },
  formulas: {
    evaporation:
      'Tres ecuaciones publicadas, de la más baja a la más alta: lo que el aire jala del agua, según la temperatura del concreto y del aire y la humedad, por lo del viento. Todo el método vale un 40% de más o de menos.',
    'set-factor':
      'Regla práctica, sin fuente: tanto más por cada 10 °F (5.6 °C) más frío que 70 °F (21 °C), tanto menos por cada 10 más caliente.',
  },
  inputs: {
    air: 'Aire',
    'concrete-temperature': 'Concreto',
    humidity: 'Humedad',
    wind: 'Viento',
    'set-shift': 'Más tiempo por cada 10 °F más frío',
    'evaporation-most': 'Proteger la superficie desde',
  },
  notes: {
    'weather-wrong':
      'El clima no puede ser así. La humedad va de 0 a 100%, el viento de 0 a 124 mph (200 km/h), el aire de −40 a 140 °F (−40 a 60 °C). Escríbalo de nuevo.',
    'evaporation-over':
      'La superficie pierde {rate}, más que su límite de {limit}: se seca más rápido de lo que sangra, y se agrieta todavía blanda. Antes de colar tenga listo: rompevientos, sombra, rocío fino o retardante de evaporación, y plásticos para taparla. Cuele temprano o en la tarde. Nunca eche agua encima para acabar.',
    'evaporation-near':
      'La superficie pierde {rate}. Las ecuaciones pueden fallar en 40%, así que su límite de {limit} queda al alcance: tenga a la mano rompevientos, rocío fino o plásticos.',
    'evaporation-low-bleed':
      'La superficie pierde {rate}. Puede bastar para agrietar una mezcla que sangra poco (seca, con fibras, mucho cemento): desde {limit} protéjala.',
    'weather-cold':
      'Aire a menos de {limit}: nada de concreto sobre suelo helado. Use agua tibia, tápelo y mantenga la losa a {keep} o más mientras cura, y que se enfríe despacio: no más de 5 °F (3 °C) por hora ni 50 °F (28 °C) por día.',
    'weather-frost':
      'Se espera helada dentro de un día. El concreto que se congela en los primeros días se echa a perder. Manténgalo a {keep} o más por lo menos tres días con cobijas, o deje el colado para después.',
    'weather-hot': `Aire a {limit} o más: la mezcla se endurece rápido. Moje antes el suelo, tenga ${bag.theMany}, la revolvedora y la carretilla en la sombra, mezcle con agua fresca, cuele partes más chicas. Tome agua y descanse en la sombra: el calor daña a la gente antes que al concreto.`,
    'concrete-hot': `El concreto pasa de {limit}. Se endurece rápido, pide más agua y se agrieta más. Enfríe el agua y ponga ${bag.theMany} en la sombra.`,
    'weather-not-given':
      'No se ha escrito el clima: los tiempos son los de 70 °F (21 °C), y no se dice nada del secado. Escríbalo en las prácticas antes de colar.',
    'weather-part-given':
      'Para saber qué tan rápido se seca la superficie hacen falta aire, humedad y viento. Lo que no se escribe no se adivina.',
    'weather-concrete-as-air':
      'El concreto se toma tan caliente como el aire. Meta un termómetro en la primera tanda y escriba lo que marque: concreto tibio en un día fresco y seco es lo que más rápido se seca.',
    'evaporation-honest':
      'Las ecuaciones valen como un 40% de más o de menos: la verdad está en algún punto de {rate}. El viento cuenta a 20 in (0.5 m) sobre la losa, el promedio, no las rachas ni el de una estación.',
    'set-rule': `Los tiempos de fraguado se toman para {at}: {factor} veces los de 70 °F (21 °C). Es regla práctica, y no todos ${bag.theMany} son iguales: mire la primera franja, no el reloj.`,
    'weather-sun':
      'Al sol la losa se calienta más que el aire y se seca y fragua antes de lo calculado. No se agrega nada por eso.',
  },
});
