/** Units that are written with words or signs of their own. */
export const measuresEn = {
  minutes: '{minutes} min',
  hours: '{hours} h',
  hoursMinutes: '{hours} h {minutes} min',
  /** From one number to another. */
  band: '{low} to {high}',
  temperature: { metric: '{number} °C', other: '{number} °F' },
  wind: { metric: '{number} km/h', other: '{number} mph' },
  evaporation: { metric: '{number} kg/m²/h', other: '{number} lb/ft²/h' },
  areaRate: { metric: '{number} m²/h', other: '{number} ft²/h' },
  volumeRate: { metric: '{number} m³/h', other: '{number} ft³/h' },
};
