/** Words of the joint layout on its ticket: how its search stands, and joints taken over to be moved by hand. */
export const jointsEn = {
  title: 'Joint layout',
  first:
    'The layout is the first answer: whether another is shorter, or breaks less, is not known.',
  proved:
    'Proved, among all layouts of straight joints through corners, block-outs and even divisions: none that breaks as little is shorter.',
  gap: 'Best found in the time there was, not proved: another layout might be shorter, or break less.',
  byHand: 'These are the joints that you drew. The report follows them.',
  takeOver: 'Take these joints over, to move them by hand',
  takeOverHint:
    'They become shapes of the sketch, and nothing is proposed any more. One undo brings the proposal back.',
  propose: 'Propose joints again, round those drawn',
};
