import type { sectionsEn } from './sectionsEn.ts';
import type { TermsEs } from './termsEs.ts';

/**
 * Words that stand in the sections. Section: sección; also corte, which is a saw cut here. Chair: silleta; also calza, taquete. Strip: tira de aislamiento.
 * Retarder: plástico; its own name is retardador de vapor. Groove: ranura.
 */
export const sectionsEs = ({ form }: TermsEs): typeof sectionsEn => ({
  titles: {
    free: 'Orilla libre',
    thickened: 'Orilla libre, engrosada',
    'existing-slab': 'Contra la losa existente',
    wall: 'Contra una pared',
    'wall-formed': `Junto a una pared, con ${form.one}`,
    steps: 'Contra los escalones',
    'block-out': 'En un hueco',
    'control-joint': 'Junta de control',
  },
  old: {
    'existing-slab': 'Losa existente: espesor no se sabe',
    wall: 'Pared',
    'wall-formed': 'Pared o faldón: no recibe concreto',
    steps: 'Escalones que se quedan',
    'block-out': 'Hueco',
  },
  slab: 'Concreto nuevo',
  thickened: 'Zanja, colada contra el suelo',
  ground: 'Suelo firme',
  base: 'Base compactada',
  retarder: 'Plástico',
  form: (board, depth) => `Tabla de ${form.one} ${board.replace('x', '×')}, ${depth} de alto`,
  stake: `Estaca, abajo del canto de la ${form.one}`,
  gap: (gap) => `Espacio ${gap}: tápelo con tierra`,
  radius: (radius) => `Orilla volteada, R ${radius}`,
  mesh: (style) => (style === '' ? 'Malla' : `Malla ${style.replaceAll('x', '×')}`),
  bars: (size, spacing) => `Varilla ${size} a cada ${spacing}, dos sentidos`,
  steelHeld: (what, by) =>
    by === 'chairs' ? `${what}, sobre silletas` : `${what}, se levanta al colar`,
  strip: (thickness) => `Tira de aislamiento, ${thickness}`,
  sealant: 'Sellador sobre la tira',
  bonded: 'Sin tira: colado contra ella, limpia y húmeda',
  dowel: (diameter, length, spacing, set) =>
    `Pasajunta Ø ${diameter} × ${length} a cada ${spacing}, ${set === 'epoxy' ? 'con epóxico' : 'en camisa'}`,
  tooled: 'Ranura con ranurador',
  sawn: 'Corte de sierra',
  crack: 'Aquí se agrieta, sin verse',
  sealantSize: (width, depth) => `Sellador, ${width} de ancho, ${depth} de hondo`,
  backer: 'Cordón de respaldo',
});
