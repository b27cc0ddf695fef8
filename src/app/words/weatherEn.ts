/** The weather that a job is figured for, as it is typed in. */
export const weatherEn = {
  title: 'Weather on the day',
  intro: 'What you measure or expect. Leave empty what you don’t know.',
  fields: {
    air: 'Air, in the shade',
    concrete: 'Concrete as it is placed',
    humidity: 'Humidity',
    wind: 'Wind over the slab',
    sky: 'Slab lies',
    frost: 'Frost expected within a day',
  },
  skies: { unsaid: 'not said', sun: 'in the sun', shade: 'in the shade' },
  units: {
    celsius: '°C',
    fahrenheit: '°F',
    percent: '%',
    kilometresAnHour: 'km/h',
    milesAnHour: 'mph',
  },
};
