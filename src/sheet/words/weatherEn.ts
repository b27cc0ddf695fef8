import type {
  WeatherFigureKey,
  WeatherInputKey,
  WeatherNoteCode,
} from '../../takeoff/weather/keys.ts';

export const weatherFigures: Readonly<Record<WeatherFigureKey, string>> = {
  evaporation: 'Water off the surface',
  'set-factor': 'Set times, against those at 70 °F (21 °C), times',
};

export const weatherFormulas: Readonly<Record<WeatherFigureKey, string>> = {
  evaporation:
    'Three published equations, from the lowest to the highest of them: the air’s pull on the water, by concrete and air temperature and humidity, times the wind’s. The whole method is no better than 40% either way.',
  'set-factor':
    'A rule of thumb, no source: so much longer for each 10 °F (5.6 °C) cooler than 70 °F (21 °C), so much shorter for each that it is warmer.',
};

export const weatherInputs: Readonly<Record<WeatherInputKey, string>> = {
  air: 'Air',
  'concrete-temperature': 'Concrete',
  humidity: 'Humidity',
  wind: 'Wind',
  'set-shift': 'Longer for each 10 °F cooler, by',
  'evaporation-most': 'Protect the surface from',
};

export const weatherNotes: Readonly<Record<WeatherNoteCode, string>> = {
  'weather-wrong':
    'The weather can’t be so. Humidity goes from 0 to 100%, wind from 0 to 124 mph (200 km/h), air from −40 to 140 °F (−40 to 60 °C). Type it again.',
  'evaporation-over':
    'The surface loses {rate}, over your limit of {limit}: it dries faster than water bleeds up, and cracks while it is soft. Before pouring have ready: a windbreak, shade, fog or an evaporation retarder, and sheets to cover it. Pour early or in the evening. Never sprinkle water to finish with.',
  'evaporation-near':
    'The surface loses {rate}. The equations can be off by 40%, so your limit of {limit} is within reach: have a windbreak, fog spray or sheets at hand.',
  'evaporation-low-bleed':
    'The surface loses {rate}. That may be enough to crack a mix that bleeds little (stiff, fibres, much cement): from {limit} on protect those.',
  'weather-cold':
    'Air under {limit}: no concrete on frozen ground. Use warm water, cover it and keep the slab at {keep} or more while it cures, then let it cool slowly: no more than 5 °F (3 °C) in an hour and 50 °F (28 °C) in a day.',
  'weather-frost':
    'Frost is expected within a day. Concrete that freezes in its first days is spoilt. Keep it at {keep} or more for three days at least under blankets, or put the pour off.',
  'weather-hot':
    'Air of {limit} or more: the mix stiffens fast. Wet the ground first, keep bags, mixer and barrow in the shade, mix with cool water, pour smaller sections. Drink, and rest in the shade: heat harms people sooner than concrete.',
  'concrete-hot':
    'The concrete is over {limit}. It stiffens fast, takes more water and cracks more. Cool the water and shade the bags.',
  'weather-not-given':
    'No weather is typed in: times are those at 70 °F (21 °C), and nothing is said of drying. Type it under practices before the pour.',
  'weather-part-given':
    'How fast the surface dries needs air, humidity and wind. What isn’t typed isn’t guessed.',
  'weather-concrete-as-air':
    'The concrete is taken as warm as the air. Put a thermometer in the first batch and type what it says: warm concrete on a cool dry day dries fastest of all.',
  'evaporation-honest':
    'The equations are good to about 40% either way: the truth lies somewhere from {rate}. Wind counts 20 in (0.5 m) over the slab, on the mean, not in gusts, nor at a weather station.',
  'set-rule':
    'Set times are taken for {at}: {factor} times those at 70 °F (21 °C). A rule of thumb, and bags differ: watch the first strip, not the clock.',
  'weather-sun':
    'In the sun the slab gets warmer than the air and dries and sets sooner than figured. Nothing is added for it.',
};
