import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type {
  thickenedFigures,
  thickenedFormulas,
  thickenedInputs,
  thickenedNotes,
} from './thickenedEn.ts';

interface ThickenedWords {
  readonly figures: typeof thickenedFigures;
  readonly formulas: typeof thickenedFormulas;
  readonly inputs: typeof thickenedInputs;
  readonly notes: typeof thickenedNotes;
}

/** Words of the thickened edge. Orilla engrosada: also dentellón, orilla reforzada. */
export const thickenedEs = ({ form, bag }: TermsEs): ThickenedWords => ({
  figures: {
    'slab-volume': 'Losa, volumen',
    'thickened-volume': 'Orilla engrosada, volumen',
  },
  formulas: {
    'slab-volume': 'Área neta por espesor.',
    'thickened-volume':
      'Lo que baja la orilla debajo de la losa, por un área media: todo lo que está dentro de su ancho desde una orilla libre cuenta entero, sobre el chaflán cada vez menos. Las esquinas van a inglete, lo que comparten dos orillas cuenta una vez, y nada fuera del colado cuenta.',
  },
  inputs: {
    'thickened-depth': 'Alto de la orilla, desde el acabado hacia abajo',
    'thickened-width': 'Ancho de la orilla abajo',
    'thickened-taper': 'Largo del chaflán',
    'thickened-below': 'Debajo de la losa',
    'thickened-flat-area': 'Área dentro del ancho de una orilla libre',
    'thickened-whole-area': 'Área dentro de ancho y chaflán de una orilla libre',
    'thickened-mean-area': 'Área media',
  },
  notes: {
    'thickened-not-deeper': `No se pueden calcular el volumen ni ${bag.theMany}: la orilla engrosada baja {depth} desde el acabado, y la losa ya tiene {thickness} de espesor. Escriba el alto completo de la orilla, o apáguela en las prácticas.`,
    'thickened-used':
      'La losa tiene {thickness} de espesor, y {depth} a lo largo de toda orilla libre: {width} de ancho abajo, subiendo a la losa en {taper}. Ninguna orilla que topa con algo se engrosa; donde termina una orilla libre, lo engrosado termina a escuadra.',
    'edges-thickened': `La orilla engrosada es una zanja en el suelo dentro de la ${form.one}, {depth} abajo del acabado y {width} de ancho abajo. La ${form.one} no se hace más alta: la {board} se queda, y los últimos {below} se cuelan contra el suelo. El suelo que no se sostiene tan alto pide una tabla más alta.`,
    'slab-thin':
      'La losa tiene {thickness} de espesor. Un código publicado para casas pide {least} por lo menos en losa sobre el terreno, más donde pasan ruedas. Decide el código local: pregunte en su oficina de construcción.',
    'trench-bank': `Debajo de la ${form.one} el talud de afuera de la zanja tiene {below} de alto y contiene el concreto, y el espacio de {gap} queda abierto hacia él. Clave primero las estacas, excave hasta la cara de adentro de la ${form.one} y no más, cierre el espacio por fuera, y saque la tierra suelta del fondo.`,
  },
});
