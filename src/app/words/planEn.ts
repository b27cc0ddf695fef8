/** Words of the board plan on the forms' ticket: how its search stands, and what to do with what is left over. */
export const planEn = {
  title: 'Board plan',
  waiting: 'First answer. A better one is looked for once you pause.',
  searching: 'First answer; looking for a better one…',
  better: 'Better than the first answer; still looking…',
  first:
    'The plan is the first answer: whether another costs less, or has fewer cuts, is not known.',
  proved: (seconds: number) =>
    `Proved in ${seconds} s: no plan buys for less. At that price none has fewer cuts, then fewer splices, then less left over.`,
  gap: {
    price: (seconds: number, most: string) =>
      `Best found in ${seconds} s, not proved: another plan could cost at most ${most} less.`,
    length: (seconds: number, most: string) =>
      `Best found in ${seconds} s, not proved: another plan could buy at most ${most} less of board.`,
    cuts: (seconds: number, most: string) =>
      `Best found in ${seconds} s. Proved: no plan buys for less. Not proved: at that price another could save ${most} at most.`,
    splices: (seconds: number, most: string) =>
      `Best found in ${seconds} s. Proved: no plan buys for less, nor has fewer cuts at that price. Not proved: another could save ${most} at most.`,
    waste: (seconds: number, most: string) =>
      `Best found in ${seconds} s. Proved: no plan buys for less, nor has fewer cuts or splices at that price. Not proved: another could leave at most ${most} less over.`,
  },
  stopped: 'You stopped the search.',
  stuck: 'The search did not end in its time and was ended.',
  failed: (why: string) =>
    `The search for a better plan failed. That is our mistake, or its files did not come down: ${why}`,
  stop: 'Leave it at this',
  again: 'Look again',
  leftovers: 'Put the leftovers on the truck’s list',
  leftoversHint:
    'For after the job: takes the boards it uses off the truck’s list and puts what is left over on it. One undo brings the list back.',
  leftoversDone:
    'The truck’s list is as it will be after this job, and this plan is of that list: it would cut these forms again, from what is left. Undo brings the list back.',
};
