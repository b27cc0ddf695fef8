import type {
  BoardColumnKey,
  BoardCountUnit,
  BoardFigureKey,
  BoardInputKey,
  BoardNoteCode,
  BoardTableKey,
  BoardTermKey,
} from '../../takeoff/boards/keys.ts';

/** Words of the boards that the forms are cut from. */
export const boardFigures: Readonly<Record<BoardFigureKey, string>> = {
  'boards-bought': 'Boards to buy',
  'boards-money': 'Boards, price',
  'boards-length-bought': 'Boards to buy, length',
  'boards-from-truck': 'Boards from the truck',
  'board-cuts': 'Cuts',
  'board-splices': 'Splices',
  'board-cleats': 'Cleats',
  'boards-waste': 'Board over what the forms need',
  'boards-proof': 'Plan of the boards',
};

export const boardFormulas: Readonly<Record<BoardFigureKey, string>> = {
  'boards-bought':
    'Boards of the yard that the plan cuts from, by length. The plan weighs money spent first (or length bought where a price isn’t known), then cuts, splices and what is left over.',
  'boards-money': 'Boards to buy of each length times the price of one.',
  'boards-length-bought': 'Boards to buy of each length times the length of one.',
  'boards-from-truck': 'Boards of the truck that the plan cuts from, by length.',
  'board-cuts':
    'Cuts that free the pieces of each board: one a piece, less one where the last piece takes all that is left, as it may run long.',
  'board-splices': 'Pieces, less runs: each piece after the first of a run makes a splice.',
  'board-cleats': 'One a splice, of the length set under practices.',
  'boards-waste':
    'Length of the boards used, less what the runs need. Part of it runs long, part is left, a little is sawdust.',
  'boards-proof':
    'A first answer is a good plan made at once. Proved: no plan is better in money, and of those none in cuts, then splices, then what is left over. Not proved: the search was ended before it was sure.',
};

export const boardInputs: Readonly<Record<BoardInputKey, string>> = {
  'boards-used': 'Length of the boards used',
  'boards-needed': 'Length that the runs need',
  'saw-kerf': 'Saw cut',
  'shortest-piece': 'Shortest piece',
  'cleat-length': 'Length of a cleat',
  'proof-weighs': 'Not proved least',
  'proof-have': 'This plan has',
  'proof-bound': 'No plan can have less than',
  'proof-seconds': 'Search, seconds',
};

export const boardTables: Readonly<Record<BoardTableKey, string>> = {
  'board-cut-list': 'Cut list',
  'board-runs': 'Boards by run',
  'board-buy': 'Boards to buy',
  'board-rests': 'Rests to keep',
};

export const boardColumns: Readonly<Record<BoardColumnKey, string>> = {
  board: 'Board',
  'board-from': 'From',
  'board-length': 'Length',
  'board-count': 'How many',
  'board-piece': 'Piece',
  'board-pieces': 'Pieces',
  'board-run': 'Run',
  'board-left': 'Left',
  'board-start': 'Start',
  'board-end': 'End',
  'board-need': 'Needs',
  'board-price': 'Each',
  'board-sum': 'Sum',
};

export const boardCounts: Readonly<
  Record<BoardCountUnit, { readonly one: string; readonly many: string }>
> = {
  board: { one: 'board', many: 'boards' },
  'board-end': { one: 'end', many: 'ends' },
  'board-length': { one: 'length', many: 'lengths' },
  cleat: { one: 'cleat', many: 'cleats' },
  cut: { one: 'cut', many: 'cuts' },
  splice: { one: 'splice', many: 'splices' },
};

export const boardTerms: Readonly<Record<BoardTermKey, string>> = {
  'board-truck': 'truck',
  'board-yard': 'yard',
  'end-passes': 'passes',
  'end-butts': 'butts',
  'end-flat': 'to the corner',
  'end-laps': 'laps on',
  'end-stops': 'stops',
  'proof-first': 'first answer',
  'proof-proved': 'proved best',
  'proof-gap': 'not proved',
  'weigh-price': 'money or length bought',
  'weigh-cuts': 'cuts',
  'weigh-splices': 'splices',
  'weigh-waste': 'what is left over',
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
    'No way was found to board {runs} with the {board} on the truck; there may well not be enough. Put in what the yard sells, or more boards.',
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
