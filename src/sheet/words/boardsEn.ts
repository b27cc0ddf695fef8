import type { BoardNoteCode } from '../../takeoff/boards/keys.ts';

export const boardCounts = {
  board: { one: 'board', many: 'boards' },
  'board-end': { one: 'end', many: 'ends' },
  'board-length': { one: 'length', many: 'lengths' },
};

export const boardNotes: Readonly<Record<BoardNoteCode, string>> = {
  // In the way.
  'boards-none':
    'There is no {board} to cut the forms from. Put in what is on the truck or what the yard sells, or choose another form board.',
  'boards-row-wrong':
    'A row of {board} in your lists of boards can’t be right: look for a length or a count that was typed wrong.',
  'boards-run-too-long':
    '{run} needs {need} of board in one piece, and the longest {board} is {longest}. Allow splices under practices, or put in a longer board.',
  'boards-run-no-splice':
    '{run} needs {need} of board, the longest {board} is {longest}, and there is no place on it where a splice could have a stake on either side. Put in a longer board, or clear the ground.',
  'boards-not-enough':
    'There isn’t enough {board} on the truck: no way was found to board {runs}. Put in what the yard sells, or more boards.',
  // Look before you build.
  'boards-corner-tight':
    'No room past {corners} for either form board to run by: both end there. Brace the corner from outside, and check that it closes.',
  'boards-stop':
    'At {ends} the form board stops against what is there already, without {least} of its side to be lapped onto. Brace it there, and close the gap.',
  'boards-twisted-used':
    'Twisted boards are used: {marks}. The screed rides on the top edge, so put them where nothing rides, or rip a straight edge first.',
  'boards-run-short':
    'Too short for a board of its own: {runs}. The boards on either side close it; see that they do.',
  // Taken as so.
  'boards-pass':
    'Form boards stand outside the line. Going round the pour with the concrete on the left, each passes the corner at its end and butts at its start, unless there is no room; the list of boards says which. A board may run long, to {runLong} past its corner, where the ground is clear. A saw cut takes {kerf}.',
  'boards-lapped':
    'At {ends} the form board is lapped onto the side of what is there already, by {lapOn} or as much as there is room for.',
  'boards-spliced':
    'Each splice has a cleat of {cleat} and a stake on either side. It stands only where both can be driven.',
  'boards-twisted-left': 'Not used, as twisted: {boards}. The screed rides on the top edge.',
  'boards-rip':
    '{boards} of those to buy could be ripped to {board} from deeper ones on the truck. Not counted.',
  'boards-price-missing':
    'No sum of money: {rows} of {board} in the yard’s list have no price, the shortest {first}. The plan buys as little length as it can.',
  'boards-curved':
    'Curved forms ({runs}) are bent from thinner stock, not from the boards listed: 1/4 in hardboard, or 1x kerfed on its inside face, ripped to depth, {length} in all with 6 in to spare at either end.',
};
