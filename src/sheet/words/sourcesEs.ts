import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { sources } from './sourcesEn.ts';

/** Where rules and constants come from. Titles of publications stay as they were published. */
export const sourcesEs = ({ form }: TermsEs): typeof sources => ({
  'bag-yields': 'Tablas publicadas de rendimiento del concreto en bolsa',
  'en5151-support-count': `Curso por correspondencia EN5151 del Ejército de EE. UU., ${form.many}: número de apoyos`,
  'en0069-squaring':
    'Curso por correspondencia EN0069 del Ejército de EE. UU., escuadrar líneas de edificio',
  'estimating-book-mesh-lap':
    'Libro de presupuestos, rollos de malla y traslapes (su 10% corregido a 11.1%)',
  'farmers-bulletin-1279':
    'USDA, Farmers’ Bulletin 1279, Plain Concrete for Farm Use (1922), en inglés',
  'form-board-statics': `Estática de una tabla sobre tres claros, coeficientes como en los textos de ${form.many}`,
  'joint-spacing-association':
    'Asociación estatal de concreto premezclado: tableros por espesor; juntas de la cuarta parte de hondo',
  'joint-spacing-concrete-code':
    'Guía del instituto del concreto, según se cita: de 24 a 36 espesores, 18 ft a lo más',
  'joint-spacing-table':
    'Libro de texto de albañilería y concreto: separación de juntas por revenimiento y piedra',
  'nails-per-pound': 'Tabla publicada de clavos por libra',
  'bag-water': 'Agua del concreto en bolsa: páginas públicas que no concuerdan',
  'navedtra-14070-estimate':
    'NAVEDTRA 14070, Engineering Aid, en inglés: cálculo de concreto con 10% de desperdicio',
  'ps-20-lumber-sizes': 'Norma americana de madera blanda PS 20, medidas mínimas cepillada y seca',
  'ready-mix-joints':
    'Consejo de la asociación de concreto premezclado: aislar losas de paredes, escalones y postes',
  'stake-spacing-article': `Artículo del oficio: estacas a no más de 3 ft en ${form.many} de 2x4 y 2x6`,
  'surveying-text-coordinate-area': 'Libro abierto de topografía: área por coordenadas',
  'critical-ratio':
    'Econometrica 19 (1951), Optimal Inventory Policy: un solo pedido para algo incierto, en inglés',
  'pallet-bags': 'Tablas publicadas de piezas por tarima',
  'shrink-factor-highway':
    'Manual de diseño de caminos federales de EE. UU., 9.4.C: factores de contracción y abundamiento',
  'wheelbarrow-1908':
    'Concrete Construction: Methods and Costs (1908): acarreo en carretilla, en inglés',
  'dowel-tables': 'Tablas publicadas de pasajuntas por espesor de losa; no coinciden',
  'rebar-sizes': 'Tablas publicadas de medidas de varilla (ASTM A615)',
  'subgrade-drag-note':
    'Nota de la industria: fórmula de arrastre sobre la subrasante, acero en losas sobre el terreno',
  'welded-wire-table-1975': 'Artículo del oficio sobre tipos de malla (1975), tabla I: pesos',
  'evaporation-paper-1998':
    'Artículo en la revista de un instituto del concreto (1998): evaporación del concreto, según se cita en público',
  'evaporation-nomograph': 'La ecuación del nomograma de evaporación, y su tabla, de memoria',
  'evaporation-uncertainty-2020':
    'Artículo posterior (2020): todo el método vale un 40% de más o de menos',
  'evaporation-limits': 'Especificaciones públicas de construcción para tiempo frío y caluroso',
  'barrow-book-1908':
    'Libro del oficio sobre costos del concreto (1908): cargas y viajes de carretilla',
  'common-practice': 'Práctica común, sin fuente publicada',
  geometry: 'Geometría',
  user: 'Ajuste suyo',
});
