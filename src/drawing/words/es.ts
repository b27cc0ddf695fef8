import type { DrawingWords } from './en.ts';
import { sectionsEs } from './sectionsEs.ts';
import type { TermsEs } from './termsEs.ts';
import { timelineEs } from './timelineEs.ts';

/**
 * The few words that stand in drawings, in the trade Spanish of US crews (Mexico and Central America first).
 *
 * For translators. Slab: losa; also placa, plancha (said of a pad here), firme, piso. Block-out: hueco; also paso, caja.
 * Patch: parche. Buried line: línea; also tubería, ducto. Sewer: drenaje; also cloaca, alcantarilla.
 */
export const es = (terms: TermsEs): DrawingWords => ({
  kinds: {
    pad: 'Plancha',
    'existing-slab': 'Losa existente',
    'building-line': 'Edificio',
    steps: 'Escalones',
    'block-out': 'Hueco',
    patch: 'Parche',
    'no-stake-zone': 'Sin estacas',
    'utility-line': 'Línea enterrada',
    joint: 'Junta',
  },
  services: {
    electric: { name: 'Línea eléctrica', carries: 'Electricidad', short: 'ELÉC' },
    gas: { name: 'Línea de gas', carries: 'Gas', short: 'GAS' },
    communication: { name: 'Línea de teléfono o datos', carries: 'Teléfono, datos', short: 'TEL' },
    water: { name: 'Línea de agua', carries: 'Agua', short: 'AGUA' },
    'reclaimed-water': {
      name: 'Línea de agua tratada',
      carries: 'Agua tratada',
      short: 'TRAT',
    },
    sewer: { name: 'Drenaje', carries: 'Drenaje', short: 'DREN' },
  },
  // B as in the marks of the tables, which are the same in every language: where the pour stops.
  joints: {
    control: { name: 'Junta de control', letter: 'C' },
    construction: { name: 'Junta de construcción', letter: 'B' },
    existing: { name: 'Junta de la losa vieja', letter: 'X' },
  },
  serviceAndName: (service, name) => `${service}: ${name}`,
  radius: (length) => `R ${length}`,
  diameter: (length) => `Ø ${length}`,
  sides: (one, other) => `${one} × ${other}`,
  // Cuerda is also said of a string line, which is hilo here.
  chord: (length) => `cuerda ${length}`,
  carries: (length, by) => `${length} ±${by}`,
  // H: hoja. R: rollo.
  meshMark: (piece, form, used) => `${piece} · ${form === 'sheet' ? 'H' : 'R'}${used}`,
  meshPiece: (mark, size) => `${mark}: ${size}`,
  bars: (rows, size, apart) => `${rows} ${size} a cada ${apart}`,
  cornerBar: (size, length) => `${size} × ${length}`,
  // T: traslape.
  lap: (length) => `T ${length}`,
  lapShort: 'T',
  seam: (mark, count, diameter, length) => `${mark}: ${count} × ${diameter} × ${length}`,
  sections: sectionsEs(terms),
  timeline: timelineEs,
  // L: libre. E: existente. P: pared, PC o PF: pared con cimbra o forma. ES: escalones. H: hueco.
  letters: {
    free: 'L',
    'existing-slab': 'E',
    wall: 'P',
    'wall-formed': `P${terms.form.One.charAt(0)}`,
    steps: 'ES',
    'block-out': 'H',
  },
  faults: {
    'crosses-itself': 'El contorno se cruza',
    'no-area': 'No encierra nada',
    'arc-without-chord': 'Arco sin largo',
    other: 'Revise aquí',
  },
});
