/** How a command ends. */
export const EXIT = {
  /** All was done. */
  done: 0,
  /** The job was read, but something stands in the way of some figures. */
  withheld: 1,
  /** The file can't be read or written, or isn't a job. */
  refused: 2,
  /** The command was given wrongly. */
  usage: 3,
} as const;

export type Exit = (typeof EXIT)[keyof typeof EXIT];
