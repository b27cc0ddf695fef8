import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { layoutTradeEn } from './layoutTradeEn.ts';

/** Words of squaring and setting out, in the shell. */
export const layoutTradeEs = ({ form }: TermsEs): typeof layoutTradeEn => ({
  title: 'Escuadrar y trazar',
  pad: 'Plancha por trazar',
  square: 'Escuadra',
  squareHint: `Se mide de esquina a esquina, en la cara de adentro de la ${form.one}.`,
  baseline: 'Línea base',
  measureFrom: 'Medir desde',
  byRule: (name) => `La más larga a la mano: ${name}`,
  edge: (feature, from, to, length) => `${feature}, ${from} a ${to}, ${length}`,
  alongFrom: (feature, zero, end) =>
    `El cero es la esquina ${zero} de “${feature}”; siga hacia ${end}, luego a escuadra hacia la ${form.one}.`,
  ties: 'Medidas de cinta',
  firstMark: 'Primera marca, M1',
  secondMark: 'Segunda marca, M2',
  corner: (feature, letter) => `${feature}, esquina ${letter}`,
  gone: 'Ya no está: escoja otra',
  backToRule: 'Escoger las dos mejores',
  tape: 'Lo que dijo la cinta',
  tapeHint: `Escriba las dos diagonales de la ${form.one} puesta, y los cuatro lados si los tiene.`,
  fitHint: `Escriba lo que midió de la ${form.one} puesta. Los lados que no ponga se toman como dibujados; de las medidas cruzadas tome las que fijan la ${form.one} (“la fija”), y una más para revisarlas.`,
  diagonal: (from, to) => `Diagonal ${from}–${to}`,
  side: (from, to) => `Lado ${from}–${to}`,
  chord: (from, to) => `A través del arco ${from}–${to}`,
  between: (from, to) => `Entre ${from}–${to}`,
  sets: 'la fija',
  checks: 'la revisa',
  drawn: (length) => `dibujado ${length}`,
  holds: 'Lado que se queda',
  clear: 'Borrar las medidas',
});
