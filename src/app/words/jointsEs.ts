import type { jointsEn } from './jointsEn.ts';

/** Words of the joint layout on its ticket: how its search stands, and joints taken over to be moved by hand. */
export const jointsEs: typeof jointsEn = {
  title: 'Acomodo de juntas',
  first:
    'El acomodo es la primera respuesta: no se sabe si otro es más corto, o rompe menos reglas.',
  proved:
    'Comprobado, entre todos los acomodos de juntas rectas por esquinas, huecos y divisiones parejas: ninguno que rompa tan poco es más corto.',
  gap: 'El mejor que se halló en el tiempo que hubo, sin comprobar: otro podría ser más corto, o romper menos.',
  byHand: 'Estas son las juntas que usted dibujó. El informe las sigue.',
  takeOver: 'Tomar estas juntas, para moverlas a mano',
  takeOverHint:
    'Quedan como figuras del croquis, y ya no se propone nada. Con deshacer una vez vuelve la propuesta.',
  propose: 'Proponer juntas otra vez, alrededor de las dibujadas',
};
