import type { TermsEs } from '../../drawing/words/termsEs.ts';
import { boardsEs } from './boardsEs.ts';
import { cliEs } from './cliEs.ts';
import { csvEs } from './csvEs.ts';
import { figuresEs } from './figuresEs.ts';
import { jointsEs } from './jointsEs.ts';
import { layoutEs } from './layoutEs.ts';
import { layoutTradeEs } from './layoutTradeEs.ts';
import { measuresEs } from './measuresEs.ts';
import { mixEs } from './mixEs.ts';
import { notesEs } from './notesEs.ts';
import { orderEs } from './orderEs.ts';
import { placingEs } from './placingEs.ts';
import { boundsEs, expectedEs, problemsEs } from './problemsEs.ts';
import { sourcesEs } from './sourcesEs.ts';
import { stakesEs } from './stakesEs.ts';
import { steelEs } from './steelEs.ts';
import type { Words } from './words.ts';

/**
 * What is said of a takeoff, in the trade Spanish of US crews (Mexico and Central America first), of “usted”. One term for
 * one thing; words that crews choose between come in as `terms`. Lengths stay as the tape has them: 12'-0", never with a
 * decimal comma.
 *
 * For translators, what else is said: pad, plancha: base, losa. Slab, losa: firme, placa, piso. Board, tabla: barrote,
 * duela. Stake, estaca. Kicker, pie de amigo: refuerzo, tornapunta, riostra. Cleat, cubrejunta: cachete, refuerzo. Splice,
 * empalme. Lap, traslape: empalme (which is the splice of boards here). Mesh, malla: malla electrosoldada, tela. Bar,
 * varilla: cabilla, fierro. Dowel, pasajunta: espiga, dowel. Chair, silleta: sillita, calza, taquete. Batch, tanda:
 * revoltura, mezcla. Mixer, revolvedora: mezcladora, trompo. Isolation joint, junta de aislamiento: junta de expansión.
 * Edge, orilla: borde, canto. Depth, alto (of a board) and espesor (of a slab): profundidad, grueso. Check, revisar: checar.
 */
export const es = (terms: TermsEs): Words => {
  const boards = boardsEs(terms);
  const stakes = stakesEs(terms);
  const order = orderEs(terms);
  const layoutTrade = layoutTradeEs(terms);
  const placing = placingEs(terms);
  return {
    ...figuresEs(terms),
    isOne: (count) => count === 1,
    counts: {
      bag: { one: terms.bag.one, many: terms.bag.many },
      batch: { one: 'tanda', many: 'tandas' },
      ...boards.counts,
      ...jointsEs.counts,
      ...mixEs(terms).counts,
      ...placing.counts,
      ...steelEs.counts,
      ...order.counts,
      box: { one: 'caja', many: 'cajas' },
      corner: { one: 'esquina', many: 'esquinas' },
      kicker: { one: 'pie de amigo', many: 'pies de amigo' },
      nail: { one: 'clavo', many: 'clavos' },
      part: { one: 'parte', many: 'partes' },
      piece: { one: 'pieza', many: 'piezas' },
      row: { one: 'hilera', many: 'hileras' },
      screw: { one: 'tornillo', many: 'tornillos' },
      sheet: { one: 'hoja', many: 'hojas' },
      sliver: { one: 'tirita', many: 'tiritas' },
      spreader: { one: 'separador', many: 'separadores' },
      stake: { one: 'estaca', many: 'estacas' },
      weight: { one: 'peso', many: 'pesos' },
    },
    terms: {
      free: 'Orilla libre',
      'existing-slab': 'Losa existente',
      wall: 'Pared, se cuela contra ella',
      'wall-formed': `Pared, con ${terms.form.one}`,
      steps: 'Escalones',
      'block-out': 'Hueco',
      straight: 'recta',
      curved: 'curva',
      ...boards.terms,
      ...jointsEs.terms,
      ...layoutTrade.terms,
      ...steelEs.terms,
      ...order.terms,
      ...stakes.terms,
      ...placing.terms,
    },
    stations: {
      ground: 'Terreno',
      forms: terms.form.One,
      steel: 'Acero',
      joints: 'Juntas',
      mix: 'Mezcla',
      order: 'Pedido',
    },
    weights: {
      stop: 'No deja seguir',
      caution: 'Revise antes de construir',
      assumption: 'Se da por hecho',
    },
    rounding: {
      none: 'Solo para mostrar; las líneas se suman antes, así que el último dígito puede variar en uno',
      up: 'Redondeado hacia arriba al entero',
      'up-each': 'Cada uno redondeado hacia arriba, luego sumados',
      nearest: 'Al milímetro cúbico más cercano',
      cent: 'Cada línea al centavo más cercano, el medio hacia arriba; las sumas son exactas',
    },
    from: {
      sketch: 'del croquis',
      practice: 'sus prácticas',
      figure: 'calculado arriba',
      published: 'publicado',
      'worked-out': 'calculado de paso',
      typed: 'escrito para este trabajo',
    },
    sources: sourcesEs(terms),
    notes: notesEs(terms),
    problems: problemsEs,
    bounds: boundsEs,
    expected: expectedEs,
    inPlace: '{where}: {says}',
    unknownProblem: 'Esto no se aceptó ({code}). No se cambió nada.',
    areaByLength: { metric: '{number} mm²/m', other: '{number} in²/ft' },
    loads: {
      density: { metric: '{number} kg/m³', other: '{number} lb/ft³' },
      pressure: { metric: '{number} kPa', other: '{number} lb/ft²' },
      stress: { metric: '{number} MPa', other: '{number} psi' },
      steel: { metric: '{number} MPa', other: '{number} ksi' },
      lineLoad: { metric: '{number} N/m', other: '{number} lb/ft' },
    },
    measures: measuresEs,
    tube: { metric: '{number} mL', other: '{number} fl oz' },
    weightByArea: { metric: '{number} kg/m²', other: '{number} lb por 100 ft²' },
    working: { formula: 'Fórmula', rounding: 'Redondeo', source: 'Fuente' },
    cli: cliEs,
    csv: csvEs,
    layout: layoutEs(terms),
  };
};
