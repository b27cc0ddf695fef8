import type { Job } from '../../job/job.ts';

/** What a part of a job is called where a link is too long for it. */
const parts: Readonly<Record<keyof Job, string>> = {
  name: 'the name',
  site: 'the site',
  notes: 'the notes for the crew',
  title: 'the title block',
  units: 'the units',
  features: 'the sketch',
  practices: 'the practices',
  lumber: 'the boards on hand',
  meshStock: 'the mesh on hand',
  weather: 'the weather',
  handStakes: 'the stakes set by hand',
  pourLog: 'the pour as it went',
  closeOut: 'the close-out',
  ground: 'the ground readings',
  bid: 'the bid',
  nextId: 'numbers',
};

/** Handing the job over: as a link, as files, as tables. */
export const handOverEn = {
  title: 'Hand over',
  open: 'Hand over…',
  close: 'Close',
  wait: 'The figures are not up to date yet. What is made of them waits.',
  opened: {
    copy: (name: string) =>
      `“${name}” came with a link and was opened as a copy. What was open before is under Jobs, untouched.`,
    refused: 'The link could not be opened. Nothing was changed.',
    close: 'Close',
  },
  link: {
    title: 'Link',
    says: 'The whole job is in the link itself; nothing is kept on a server. Who opens it gets a copy of the job as it is now.',
    label: 'Link to a copy of this job',
    length: (count: number) => `${count} characters.`,
    notEasy: (most: number) =>
      `Some messengers cut a message at ${most} characters: send it by mail, or send the job file.`,
    reach: {
      device: 'This page is open at an address of this device alone: the link opens nowhere else.',
      network: 'This page is open at an address of your own network: the link opens only there.',
      anywhere: '',
    },
    copy: 'Copy link',
    send: 'Send link…',
    copied: 'Copied.',
    copyByHand: 'The browser did not copy it. The link is marked above: copy it by hand.',
    making: 'Packing…',
    failed: (why: string) => `The link could not be made (${why}). Send the job file instead.`,
    tooLong: (length: number, most: number) =>
      `A link to this job would be ${length} characters long. No more than ${most} is sure to arrive everywhere, so none is made. Send the job file instead.`,
    makesLong: (parts: string) => `What makes it long: ${parts}.`,
    part: (part: keyof Job, count: number) => `${parts[part]} (${count})`,
  },
  files: {
    title: 'Files',
    job: 'Job file',
    jobSays: 'All of the job, to open again in Notchpad.',
    pdf: 'Crew sheet, PDF',
    pdfSays: 'As it is chosen at the Sheet station.',
    save: 'Save',
    send: 'Send…',
    making: 'Writing…',
    tapAgain: 'Ready now. Tap “Send…” once more.',
  },
  sketch: {
    title: 'Sketch',
    says: (scale: string) => `At ${scale} on paper. To build from, print the crew sheet.`,
    station: 'Layer on top',
    svg: 'SVG',
    svgSays: 'A drawing: true to scale, its words can be searched.',
    png: 'PNG',
    pngSays: 'A picture, for a message.',
    tooLarge: 'The site is larger than any scale holds on paper.',
  },
  tables: {
    title: 'Tables',
    says: 'CSV, for any spreadsheet: each figure as it is read and as a plain number.',
    all: 'All tables (zip)',
    csv: 'CSV',
    saveTable: (table: string) => `Save “${table}” as CSV`,
    none: 'No tables yet: nothing is figured.',
  },
  outcome: {
    sent: 'Handed on.',
    putAway: 'Not sent.',
    failed: (why: string) => `That did not work (${why}).`,
    saved: 'Saved where the browser keeps downloads.',
  },
};
