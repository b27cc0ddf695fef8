import type { JobProblemCode } from '../../job/problems.ts';
import type { StorageProblemCode } from '../../storage/problems.ts';
import type { UnitProblemCode } from '../../units/problems.ts';

/** Why something that was typed, done or opened wasn't taken, and how to mend it. `{where}` is what was typed. */
export const problems: Readonly<
  Record<UnitProblemCode | JobProblemCode | StorageProblemCode, string>
> = {
  // Typed values.
  'length-empty': 'Type a length, like 12\'-4 1/2" or 3760 mm.',
  'length-unreadable':
    '“{where}” isn’t a length I can read. Write it like 12\'-4 1/2", 12-4.5, 148.5in, 3.76m or 3760 mm.',
  'length-comma':
    'The comma in “{where}” could part thousands or decimals. Write a point for decimals, and thousands without a comma.',
  'length-fraction':
    'The fraction in “{where}” is on no tape. Use halves, quarters, eighths, sixteenths, 32nds or 64ths, less than one.',
  'length-inches':
    '“{where}” has twelve inches or more beside the feet. Carry them: 12 in is 1 ft.',
  'length-ambiguous': '“{where}” could be {one} or {other}. Type the one you mean.',
  'length-unit-needed': '“{where}” needs a unit: write in, ft, mm or m behind it.',
  'length-absurd': '“{where}” is more than 2 km. Look for a unit or a digit too many.',
  'number-empty': 'Type a number.',
  'number-unreadable': '“{where}” isn’t a number I can read. Use digits and one point.',
  'number-comma':
    'The comma in “{where}” could part thousands or decimals. Write a point for decimals, and thousands without a comma.',
  'volume-empty': 'Type a volume, like 0.6 ft³ or 17 L.',
  'volume-unreadable':
    '“{where}” isn’t a volume I can read. Write it like 0.6 ft³, 2 yd³, 17 L or 0.5 m³.',
  'volume-comma':
    'The comma in “{where}” could part thousands or decimals. Write a point for decimals, and thousands without a comma.',
  'weight-empty': 'Type a weight, like 80 lb or 25 kg.',
  'weight-unreadable': '“{where}” isn’t a weight I can read. Write it like 80 lb or 25 kg.',
  'weight-comma':
    'The comma in “{where}” could part thousands or decimals. Write a point for decimals, and thousands without a comma.',
  'share-empty': 'Type a percentage, like 10%.',
  'share-unreadable': '“{where}” isn’t a percentage I can read. Write it like 10% or 7.5%.',
  'share-comma': 'The comma in “{where}” isn’t clear. Write a point for decimals.',
  'money-empty': 'Type a price, like 12.50.',
  'money-unreadable': '“{where}” isn’t a price I can read. Write it like 12.50.',
  'money-comma':
    'The comma in “{where}” could part thousands or decimals. Write a point for decimals, and thousands without a comma.',
  'money-places': '“{where}” has more than two places after the point. A price has two.',
  'money-range': '“{where}” is less than nothing, or more than any price. Type it again.',
  'angle-empty': 'Type an angle in degrees, like 90 or 22.5.',
  'angle-unreadable':
    "“{where}” isn’t an angle I can read. Write degrees, like 90, 22.5 or 22°30'.",
  'angle-range': '“{where}” is more than a full turn. Use 360° at most.',

  // Commands.
  'no-such-feature': 'That shape isn’t in the job any more. Pick it again.',
  'no-such-corner': 'That corner isn’t there any more. Pick it again.',
  'no-such-stake': 'That stake isn’t set by hand any more. Pick it again.',
  'stake-there-already':
    'A stake is set by hand at this very place already. Move that one, or free it.',
  'too-many-hand-stakes': 'No more than {most} stakes can be set by hand. Free some of them first.',
  'no-such-edge': 'There is no edge after the last corner of an open line. Pick another edge.',
  'id-taken': 'Two things in a job can’t have the same id. Draw it again.',
  'not-an-outline': 'This shape is round and has no corners. Change its middle or its diameter.',
  'not-round': 'This shape isn’t round. Move its corners instead.',
  'not-for-this-kind': 'That setting doesn’t belong to this kind of shape. Nothing was changed.',
  'too-few-corners':
    'A closed shape needs three corners at least, or two where an edge is curved; an open line needs two. Put in another first, or take the whole shape away.',
  'size-not-positive': 'A size must be more than nothing.',
  'edge-turns-over':
    'With that length a neighbouring edge would vanish or run backwards. Move the other end, or change the neighbour first.',
  'attached-to-itself': 'A corner can’t be held on an edge of its own shape.',
  'attachment-lost':
    'The edge that this corner should stay on isn’t there. Move the corner freely, or pick another edge.',
  'attachment-circle':
    'These corners hold on to each other in a circle, so none of them has a place. Move one of them off its edge first.',
  'corners-coincide':
    'Two corners in a row lie on the same place. Move one of them, or take it out.',
  'joint-not-straight':
    'A joint runs straight: it can’t be curved. Put in a corner where it should turn.',
  'too-large':
    'The job would be more than 200 m (656 ft) across. Look for a number that was typed wrong.',
  'too-far': 'A place more than 2 km away can’t be right. Look for a number that was typed wrong.',
  'not-on-grid': 'That isn’t a usable number. Type it again.',
  'notch-too-large': 'The notch is as long or as wide as the whole pad. Make it smaller.',

  // Boards of truck and yard.
  'board-too-short':
    'A board of a list must be 1 ft (305 mm) long at least. Look for a missing unit: a bare 12 is read as inches. When no board is left, take the row away.',
  'board-too-long':
    'A board longer than 20 m (65 ft) comes on no truck. Look for a unit or a digit too many.',
  'board-count':
    'How many boards must be a whole number from 1 to 1000. When none are left, take the row away.',
  'board-price': 'A price can’t be less than nothing, nor as much as that. Type it again.',

  // Files.
  'file-empty': 'The file is empty. Choose another.',
  'file-not-json':
    'The file can’t be read: it is damaged, or no job file. (The reader says: {says})',
  'file-not-ours': 'This isn’t a job file of Notchpad. Choose one that was exported here.',
  'file-newer':
    'This file was written by a newer Notchpad (file version {version}; this one knows {known}). Get the new version, then open it.',
  'file-version':
    'The file says its version is {seen}, which is none. It was changed or damaged: use another copy.',
  'file-too-big': 'The file is too large for a job file. Choose another.',
  'field-missing': 'Something is missing here.',
  'field-unknown': 'A job file has nothing of this name.',
  'field-type': 'This should be {expected}, but the file has {seen}.',
  'field-choice': '{seen} isn’t one of the choices: {choices}.',
  'field-range': '{seen} is out of bounds. {bound}',
  'field-order': 'The least or first is more than the most or last. Swap them.',
  'field-long': 'This is longer than it may be: {most} at most.',
  'field-none': 'This list may not be empty.',
  'field-id': '{seen} is no id: letters, digits, - and _ only.',
  'field-id-twice': 'The id {id} is used twice.',
  'field-next-id': 'The next free number is {seen}, but {least} and below are in use.',
  'field-not-closed': 'Only a building line, a utility line or a joint may be open.',
  'field-not-open':
    'A utility line or a joint must be open: it runs from its first corner to its last and goes round nothing.',
  'field-no-such-mix': 'The blend names a mix that isn’t in the list ({mix}).',
  'file-more-problems': '… and {count} more.',

  // Jobs kept on the device.
  'no-such-job': 'That job isn’t on this device any more.',
  'storage-full': 'The device has no room left. Export the job file now, then clear some room.',
  'storage-blocked':
    'Another tab holds the jobs of an older version open. Close that tab, then try again.',
  'storage-unavailable':
    'This browser keeps nothing for this page ({says}). You can work, but export the job file before you leave.',

  // Links that carry a job.
  'link-not-read':
    'The link could not be read ({says}). It is still in the address: load this page again.',
  'link-cut-short':
    'The end of the link is missing: it was cut off on its way. Copy the whole link, or ask for the job file instead.',
  'link-broken':
    'The link isn’t as it was made: a sign in it was changed or lost. Copy it again, or ask for the job file instead.',
  'link-newer':
    'The link was made by a newer Notchpad (packing {packing}; this one knows up to {known}). Load this page again with signal, then open the link once more.',
  'link-too-long':
    'The link is {length} characters long; {most} is the most that is read. Ask for the job file instead.',
};

/** The bound that a number in a file is beyond: one of the two is told. */
export const bounds = { least: 'At least {least}.', most: 'At most {most}.' };

/** What a file's field should have been. */
export const expected: Readonly<Record<string, string>> = {
  text: 'text',
  number: 'a number',
  'whole-number': 'a whole number',
  list: 'a list',
  object: 'a group of fields',
  'true-false': 'true or false',
};
