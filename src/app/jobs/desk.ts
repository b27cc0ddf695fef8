import type { Job } from '../../job/job.ts';
import type { Problem } from '../../units/result.ts';
import type { Store } from '../store.ts';

export interface JobSummary {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
}

/** A job that couldn't be read: whose it is, why, and its text when it is to be had. */
export interface Refused {
  readonly name: string;
  readonly problems: readonly Problem[];
  readonly text?: string;
}

/** The jobs on this device, as the list shows them. */
export interface Board {
  readonly jobs: readonly JobSummary[];
  /** The job deleted last, which can still be brought back. */
  readonly removed: { readonly id: string; readonly name: string } | null;
  readonly refused: Refused | null;
  /** Why this browser keeps nothing here, when it doesn't. */
  readonly cantKeep: string | null;
  /** The browser said that it may clear what is kept when room is short. */
  readonly mayBeCleared: boolean;
}

/** Where jobs are taken from and laid down. */
export interface Desk {
  readonly board: Store<Board>;
  readonly refresh: () => void;
  readonly start: (job: Job) => void;
  /** Answers whether it is open now; when not, the board says why. */
  readonly open: (id: string) => Promise<boolean>;
  readonly rename: (id: string, name: string) => void;
  readonly copy: (id: string) => void;
  readonly remove: (id: string) => void;
  readonly bringBack: () => void;
  readonly bringIn: (file: File) => Promise<boolean>;
  readonly exportOpen: () => void;
  readonly saveRefused: () => void;
  readonly takeOver: () => void;
  /** Settles when nothing is left to write. */
  readonly idle: () => Promise<void>;
}
