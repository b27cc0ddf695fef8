import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { formsSheetEn } from './formsSheetEn.ts';

/** Words of the printed plan of forms and stakes. */
export const formsSheetEs = ({ form, bag }: TermsEs): typeof formsSheetEn => ({
  title: `${form.One} y estacas`,
  legend: `${form.One} y estacas`,
  board: `Tabla de ${form.one} y su marca`,
  bareBoard: `Tabla de ${form.one}`,
  splice: 'Empalme con cubrejunta',
  stake: 'Estaca',
  hand: 'Estaca puesta a mano',
  kicked: 'Estaca con pie de amigo',
  inside: 'Por dentro: sacar, tapar hoyo',
  kicker: 'Pie de amigo desde más afuera',
  spreader: 'Separador a lo existente',
  weight: `Peso: ${bag.many} o bloques`,
  lookHere: 'Revise: no cumple la regla',
  running: 'Distancias desde el aro',
  unmeasured: (runs) => `En el plano no caben las distancias de estacas de ${runs}: vea la lista.`,
  manyUnmeasured: 'Hay distancias de estacas que no caben en el plano: vea la lista.',
  from: `Las estacas se miden por la cara de adentro de la ${form.one}, desde la esquina donde empieza su tramo (el aro en el plano), cada cifra desde esa esquina. Las esquinas llevan letra en un cuadro.`,
});
