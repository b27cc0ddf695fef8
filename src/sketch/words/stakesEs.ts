import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { stakesEn } from './stakesEn.ts';

/** What the form setter reads and hears of single stakes. */
export const stakesEs = ({ form }: TermsEs): typeof stakesEn => ({
  named: {
    planned: (run) => `Estaca en ${run}, donde la pone el plan`,
    pinned: (run) => `Estaca en ${run}, fijada a mano`,
    removed: (run) => `Estaca en ${run}, quitada a mano`,
  },
  is: { planned: 'plan', pinned: 'fijada', removed: 'quitada' },
  off: {
    pinned: `Una estaca fijada ya no está sobre ninguna ${form.one}.`,
    removed: `Un lugar del que se quitó una estaca ya no está sobre ninguna ${form.one}.`,
  },
  selected: (stake, fromStart, start) => `Escogido: ${stake}, a ${fromStart} de ${start}`,
  start: 'el inicio',
  end: 'el final',
  corner: (letter) => `la esquina ${letter}`,
  cornerOf: (feature, letter) => `la esquina ${letter} de ${feature}`,
  from: (place) => `De ${place}`,
  pin: 'Fijar',
  remove: 'Quitar',
  free: 'Soltar',
  freeWhy: 'De vuelta a donde la pone el plan',
  tooNearEnd: (least, most) =>
    `Una estaca necesita todo su ancho sobre la tabla: escriba de ${least} a ${most}.`,
  broken: {
    spacing: (found, allowed) =>
      `No cumple la separación: hay ${found}, y lo más ancho es ${allowed}.`,
    'from-end': (found, allowed) =>
      `No cumple la distancia a la punta: la estaca más cercana está a ${found}, y lo más es ${allowed}.`,
    splice: (found, allowed) =>
      `Deja un empalme sin estaca de un lado: la más cercana está a ${found}, y lo más es ${allowed}.`,
    blocked: (found, allowed) =>
      `Aquí no se puede clavar: está a ${found} de lo que estorba, y lo menos es ${allowed}.`,
  },
  table: {
    title: 'Estacas',
    hint: 'Las estacas fijadas se quedan donde están, y el plan pone las demás alrededor.',
    none: 'Todavía no hay estacas calculadas.',
    run: `Tramo de ${form.one}`,
    part: (run, first, last) => `${run}, estacas ${first} a ${last}`,
    stake: 'Estaca',
    state: 'Está',
    more: 'Fijar, quitar',
    cell: (stake, place) => `Estaca ${stake}, distancia desde ${place}`,
    select: (stake) => `Mostrar la estaca ${stake} en el croquis`,
    pin: (stake) => `Fijar aquí la estaca ${stake}`,
    remove: (stake) => `Quitar la estaca ${stake}`,
    free: (stake) => `Soltar la estaca ${stake}`,
    addAt: (place) => `Una más, a esta distancia de ${place}`,
    add: 'Fijar una más',
    freeAll: (count) => (count === 1 ? 'Soltar la puesta a mano' : `Soltar las ${count}`),
  },
});
