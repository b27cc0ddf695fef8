/** Words of the printed plan of forms and stakes. */
export const formsSheetEn = {
  title: 'Forms and stakes',
  legend: 'Forms and stakes',
  board: 'Form board and its mark',
  bareBoard: 'Form board',
  splice: 'Splice with cleat',
  stake: 'Stake',
  hand: 'Stake set by hand',
  kicked: 'Stake with kicker',
  inside: 'Inside stake: pull, pack hole',
  kicker: 'Kicker from farther out',
  spreader: 'Spreader to what is there',
  weight: 'Weight: bags or blocks',
  lookHere: 'Look here: rule broken',
  running: 'Distances from the ring',
  /** Runs whose stakes found no room for their distances on the plan. */
  unmeasured: (runs: string) => `No room on the plan for stake distances of ${runs}: see the list.`,
  manyUnmeasured: 'Stake distances without room on the plan: see the list.',
  from: 'Stakes are measured along the inside face of the form, from the corner where their run starts (the ring on the plan), each figure from that corner. Corners are lettered in boxes.',
};
