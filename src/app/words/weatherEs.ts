import type { weatherEn } from './weatherEn.ts';

export const weatherEs: typeof weatherEn = {
  title: 'Clima del día',
  intro: 'Lo que usted mide o espera. Deje vacío lo que no sepa.',
  fields: {
    air: 'Aire, a la sombra',
    concrete: 'Concreto al colarse',
    humidity: 'Humedad',
    wind: 'Viento sobre la losa',
    sky: 'La losa queda',
    frost: 'Se espera helada dentro de un día',
  },
  skies: { unsaid: 'sin decir', sun: 'al sol', shade: 'a la sombra' },
  units: {
    celsius: '°C',
    fahrenheit: '°F',
    percent: '%',
    kilometresAnHour: 'km/h',
    milesAnHour: 'mph',
  },
};
