/** Words of the printed plan of the steel. */
export const steelSheetEn = {
  title: 'Steel and joints',
  legend: 'Steel and joints',
  piece: 'Mesh: piece · sheet or roll',
  lap: (least: string) => `L: lap, ${least} at least`,
  bar: (size: string) => `${size} bar`,
  barLap: (length: string) => `Bars lapped ${length}`,
  corner: 'Bar across inside corner',
  chair: (spacing: string) => `Chair, ${spacing} apart at most`,
  chairsNotDrawn: (spacing: string) => `Chairs ${spacing} apart, not drawn`,
  dowel: 'Dowel, half in the old slab',
  running: 'Distances from the ring',
  /** Seams whose holes found no room for their distances. */
  unmeasured: (seams: string) =>
    `No room on the plan for dowel distances of ${seams}: see the list.`,
  manyUnmeasured: 'Dowel distances without room on the plan: see the list.',
  fromMesh:
    'Lay pieces in the order of their numbers; where a side is dashed it lies under the next piece. S is a sheet, R a roll, by its number in the list below.',
  fromBars:
    'Bars lie evenly between the first and the last of each way, as far apart as their line says; a hole or a notch breaks a bar in two.',
  fromJoints: 'Joints by their marks: where each begins and ends stands in the list below.',
  fromDowels: 'Holes for dowels are measured along the edge of the old slab, from the ring.',
};
