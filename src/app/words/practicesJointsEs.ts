import type { practicesJointsEn } from './practicesJointsEn.ts';

/** What each practice of joints is, in words, and how far practitioners differ. */
export const practicesJointsEs: typeof practicesJointsEn = {
  units: { degrees: '°', fluidOunces: 'fl oz', millilitres: 'mL' },
  fields: {
    jointLayout: { label: 'Juntas' },
    jointFactor: { label: 'Tableros, a lo más tantas veces el espesor' },
    jointCap: { label: 'Tableros, nunca más largos de' },
    jointRatio: { label: 'Largo entre ancho, a lo más' },
    jointLeast: { label: 'Tableros, no más angostos de' },
    jointAngle: { label: 'Esquina más aguda' },
    jointMade: { label: 'Las juntas van' },
    jointShare: { label: 'Juntas, hondo como parte del espesor' },
    jointLeastDepth: { label: 'Juntas, hondo mínimo' },
    existing: { label: 'Tira contra losa existente' },
    wall: { label: 'Tira contra paredes' },
    steps: { label: 'Tira contra escalones' },
    blockOut: { label: 'Tira alrededor de huecos' },
    bondAtPatch: { label: 'Parches pegados a la losa vieja, sin tira' },
    stripThickness: { label: 'Tira, grueso' },
    stripRecess: { label: 'Tira, más baja por' },
    pieceLength: { label: 'Tira, largo de una pieza' },
    sealJoints: { label: 'Juntas de control selladas' },
    sealWidth: { label: 'Ranura, ancho' },
    sealDepth: { label: 'Sellador, hondo' },
    backer: { label: 'Cordón de respaldo debajo' },
    sealStrip: { label: 'Sellado sobre la tira' },
    cartridge: { label: 'Trae un cartucho' },
  },
  choices: {
    proposed: 'Propuestas, alrededor de las dibujadas',
    'by-hand': 'Solo las dibujadas a mano',
    tooled: 'Ranuradas',
    sawn: 'Cortadas con sierra',
  },
  notes: {
    jointLayout: {
      says: 'Las propuestas son las más cortas que cumplen las reglas de abajo, alrededor de las que usted dibuja. Tómelas debajo de la boleta para mover o quitar alguna.',
      source: 'Búsqueda nuestra.',
    },
    jointSpacing: {
      says: '24 con piedra de menos de 3/4 in, 30 con más grande, 36 con mezcla seca: 8, 10 o 12 ft en una losa de 4 in. Banquetas muchas veces cada 5 ft. Topes vistos: 15, 16 y 18 ft.',
      source: 'Tablas publicadas que no coinciden.',
    },
    jointRatio: {
      says: 'Lo más cuadrados que se pueda; los largos y angostos se agrietan a la mitad. Las tiritas y las esquinas agudas se quiebran.',
      source: 'Una guía publicada (1.5); lo demás es práctica común.',
    },
    jointDepth: {
      says: 'La cuarta parte del espesor; una norma canadiense dice hasta la tercera. Una ranura poco honda no agrieta nada.',
      source: 'Guías publicadas.',
    },
    isolation: {
      says: 'Se ve relleno de 1/4 in a 1 in de grueso, donde el concreto nuevo topa con algo que se queda. Deja que la losa se mueva sin agrietarse.',
      source: 'Las especificaciones publicadas no coinciden.',
    },
    bondAtPatch: {
      says: 'A un pedazo chico que falta se le puede hacer uno con la losa que rellena: raspado, limpio y mojado, o con adherente. Si no, se deja aparte como lo demás.',
      source: 'Práctica común, sin fuente.',
    },
    sealant: {
      says: 'Muchos dejan abiertas las ranuras de patios y banquetas. Selladas no dejan entrar agua ni tierra, y piden sellarse otra vez a los años. Común: la mitad de hondo que de ancho, nunca menos de 1/4 in.',
      source: 'Práctica común, sin fuente.',
    },
  },
};
