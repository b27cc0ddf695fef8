/** What the command line says. */
export const cli = {
  takeoffUsage: `Usage: npm run takeoff -- <job.json> [--text [--workings]] [--search <seconds>] [--language <code>]
                                   [--csv <folder>] [--link <address>]
  <job.json>  a job file exported from Notchpad; - reads it from standard input
  --text      print tickets to read instead of JSON
  --workings  with --text: the working under each figure
  --search    look so many seconds for better plans of boards, bars, mesh and joints; without it, the first answers
  --language  en or es; without it, en
  --csv       write every table as a CSV file into this folder, instead of JSON
  --link      print a link that opens a copy of the job in the Notchpad at this address, instead of JSON
  --help      print this
Exit codes: 0 all figured, 1 some figures withheld, 2 file refused, 3 wrong use.`,
  schemaUsage: `Usage: npm run schema [-- <file>]
  <file>      write the JSON Schema of the job file there; without it, to standard output
  --help      print this
Exit codes: 0 written, 2 file can't be written, 3 wrong use.`,
  sheetUsage: `Usage: npm run sheet -- <job.json> --out <file.pdf|file.svg> [options]
  <job.json>  a job file exported from Notchpad; - reads it from standard input
  --out       a PDF of all pages, or an SVG a page (file-1.svg, file-2.svg…)
  --paper     letter, tabloid, a4 or a3; without it, letter, or a4 for a metric job
  --turn      upright or sideways; without it, as the larger scale fits
  --scale     of the plans, as '1/2"' or 1:50; without it, the largest that fits one page.
              One that doesn't fit goes over several pages with match lines
  --pages     which, as layout,forms,set-out; without it, all
  --one-page  what a small pad needs, instead of --pages
  --both      titles, heads and names in English and Spanish, sentences in Spanish
  --date      written in the title block as it is
  --search    look so many seconds for better plans of boards, bars, mesh and joints; without it, the first answers
  --language  en or es; without it, en
  --help      print this
Exit codes: 0 written, 1 written with some figures withheld, 2 file refused or can't be written, 3 wrong use.`,
  outFile: 'Give --out a file that ends in .pdf or .svg.',
  unknownChoice: '--{option} takes {those}, not “{typed}”.',
  oneFile: 'Give one job file.',
  unknownOption: 'There is no option {option}.',
  unknownLanguage: '--language takes {languages}, not “{typed}”.',
  csvFolder: '--csv takes a folder to write to.',
  linkAddress: '--link takes an address that begins with https:// or http://, not “{typed}”.',
  linkTooLong:
    'The link would be {length} characters long; no more than {most} is sure to arrive. Send the job file instead.',
  searchSeconds: '--search takes seconds from 0 to {most}, not “{typed}”.',
  searchFailed: 'A search for a better plan failed, and the plans are the first answers: {why}',
  cantRead: 'The file {file} can’t be read: {why}',
  cantWrite: 'The file {file} can’t be written: {why}',
  refused: 'The file {file} is refused. Nothing was figured:',
  withheld: 'Some figures are withheld:',
  standardInput: 'from standard input',
  codes: {
    ENOENT: 'there is no such file.',
    EACCES: 'it may not be opened.',
    EISDIR: 'it is a folder.',
  } as Readonly<Record<string, string>>,
  notNamed: 'Job without a name',
};
