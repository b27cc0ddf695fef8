/** Words of squaring and setting out, in the shell. */
export const layoutTradeEn = {
  title: 'Squaring and layout',
  pad: 'Pad to set out',
  square: 'Square',
  squareHint: 'Measured corner to corner, on the inside face of the form.',
  baseline: 'Baseline',
  measureFrom: 'Measure from',
  byRule: (name: string) => `Longest at hand: ${name}`,
  edge: (feature: string, from: string, to: string, length: string) =>
    `${feature}, ${from} to ${to}, ${length}`,
  alongFrom: (feature: string, zero: string, end: string) =>
    `Zero is corner ${zero} of “${feature}”; go along toward ${end}, then square out to the form.`,
  ties: 'Tape ties',
  firstMark: 'First mark, M1',
  secondMark: 'Second mark, M2',
  corner: (feature: string, letter: string) => `${feature}, corner ${letter}`,
  gone: 'No longer there: choose another',
  backToRule: 'Choose the best two',
  tape: 'What the tape said',
  tapeHint: 'Type both diagonals of the set form, and the four sides if you have them.',
  fitHint:
    'Type what you measured of the set form. Sides that you leave out are taken as drawn; of the ties across it takes those that set the form (“sets it”), and one more to check them.',
  diagonal: (from: string, to: string) => `Diagonal ${from}–${to}`,
  side: (from: string, to: string) => `Side ${from}–${to}`,
  chord: (from: string, to: string) => `Across the arc ${from}–${to}`,
  between: (from: string, to: string) => `Between ${from}–${to}`,
  sets: 'sets it',
  checks: 'checks it',
  drawn: (length: string) => `drawn ${length}`,
  holds: 'Side that stays',
  clear: 'Clear the readings',
};
