import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { practicesEdgeEn } from './practicesEdgeEn.ts';

/** What the thickened edge, the base and the edger are, in words. Edger: volteador; also bordeador, orillador. */
export const practicesEdgeEs = ({ form }: TermsEs): typeof practicesEdgeEn => ({
  fields: {
    thickenedUse: { label: 'Las orillas libres van engrosadas' },
    thickenedDepth: { label: 'Orilla engrosada, alto completo' },
    thickenedWidth: { label: 'Orilla engrosada, ancho abajo' },
    thickenedTaper: { label: 'Orilla engrosada, largo del chaflán' },
    baseDepth: { label: 'Base bajo la losa' },
    retarder: { label: 'Plástico contra la humedad bajo la losa' },
    edgeRadius: { label: 'Volteador, radio' },
  },
  notes: {
    thickenedUse: {
      says: `Una zanja dentro de la ${form.one}, a lo largo de toda orilla libre. Otros engrosan solo las orillas que cargan o que cruzan ruedas, o ninguna: un patio rara vez lo necesita. Donde el suelo se hiela o se carga algo, deciden el código y un profesional con licencia.`,
      source: 'Práctica común, sin fuente.',
    },
    thickenedDepth: {
      says: 'Desde el acabado hacia abajo, con todo y losa: se ve de 8 a 12 in bajo una losa de 4 in.',
      source: 'Práctica común, sin fuente. Primero el código local.',
    },
    thickenedWidth: {
      says: 'Desde la cara de afuera hacia adentro: se ve de 8 a 12 in. El ancho de una pala es lo menos que se excava.',
      source: 'Práctica común, sin fuente.',
    },
    thickenedTaper: {
      says: 'En cuánto sube el fondo hasta la cara de abajo de la losa. Lo mismo que sube da 45°; 0 es un escalón a escuadra, que se agrieta antes.',
      source: 'Práctica común, sin fuente.',
    },
    baseDepth: {
      says: 'Piedra o grava compactada. 0 es sin base: muchas planchas chicas van sobre suelo firme. Se ve: 4 in en suelo que guarda agua.',
      source: 'Práctica común; primero el código local.',
    },
    retarder: {
      says: 'Plástico justo debajo de la losa, para pisos que deben quedar secos. Afuera casi no se pone: el agua de sangrado tiene así una salida menos.',
      source: 'Práctica común; primero el código local.',
    },
    edgeRadius: {
      says: 'Volteadores de 1/4 a 1/2 in. 0 deja la orilla viva, y se despostilla.',
      source: 'Práctica común, sin fuente.',
    },
  },
});
