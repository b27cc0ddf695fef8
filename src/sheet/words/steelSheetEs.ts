import type { steelSheetEn } from './steelSheetEn.ts';

/** Words of the printed plan of the steel. */
export const steelSheetEs: typeof steelSheetEn = {
  title: 'Acero y juntas',
  legend: 'Acero y juntas',
  piece: 'Malla: pieza · hoja o rollo',
  lap: (least) => `T: traslape, mínimo ${least}`,
  bar: (size) => `Varilla ${size}`,
  barLap: (length) => `Varillas traslapadas ${length}`,
  corner: 'Varilla en esquina interior',
  chair: (spacing) => `Silleta, a ${spacing} máximo`,
  chairsNotDrawn: (spacing) => `Silletas a ${spacing}, sin dibujar`,
  dowel: 'Pasajunta, mitad en losa vieja',
  running: 'Distancias desde el aro',
  unmeasured: (seams) =>
    `En el plano no caben las distancias de pasajuntas de ${seams}: vea la lista.`,
  manyUnmeasured: 'Hay distancias de pasajuntas que no caben en el plano: vea la lista.',
  fromMesh:
    'Tienda las piezas en el orden de sus números; el lado con rayas va debajo de la pieza que sigue. H es una hoja, R un rollo, con su número de la lista de abajo.',
  fromBars:
    'Las varillas van parejas entre la primera y la última de cada sentido, separadas como dice su línea; un hueco o un recorte parte la varilla en dos.',
  fromJoints: 'Juntas por su marca: dónde empieza y acaba cada una está en la lista de abajo.',
  fromDowels: 'Los hoyos de las pasajuntas se miden por la orilla de la losa vieja, desde el aro.',
};
