import { useRef, useState } from 'react';
import { download } from '../jobs/download.ts';
import { useWords } from '../SessionContext.ts';
import { OutcomeNote } from './OutcomeNote.tsx';
import { canSend, failed, type Outcome, send } from './outcome.ts';

/** Something that can be had as a file. */
export interface MadeFile {
  readonly name: string;
  readonly content: BlobPart;
  readonly type: string;
}

interface FileRowProps {
  readonly title: string;
  readonly says: string;
  /** It is made of what isn't there yet. */
  readonly waits?: boolean;
  /** The ending and kind of such a file, to ask the device beforehand whether it takes one. */
  readonly type: string;
  readonly make: () => MadeFile | Promise<MadeFile>;
}

/** A file to save, or to send from a phone. It is made when it is wanted, and again when its maker is another. */
export function FileRow({ title, says, waits = false, type, make }: FileRowProps) {
  const words = useWords().app.handOver.files;
  const [making, setMaking] = useState(false);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const ready = useRef<{ readonly by: FileRowProps['make']; readonly file: MadeFile } | null>(null);

  async function withFile(use: (file: MadeFile) => Outcome | Promise<Outcome>) {
    setMaking(true);
    setOutcome(null);
    try {
      const file = ready.current?.by === make ? ready.current.file : await make();
      ready.current = { by: make, file };
      setOutcome(await use(file));
    } catch (error) {
      setOutcome(failed(error));
    } finally {
      setMaking(false);
    }
  }

  return (
    <div className="file-row">
      <p>
        <strong>{title}</strong> <span className="field-note">{says}</span>
      </p>
      <div className="button-row">
        <button
          type="button"
          className="plain"
          disabled={waits || making}
          aria-label={`${title}: ${words.save}`}
          onClick={() =>
            withFile(({ name, content, type }) => {
              download(name, content, type);
              return { is: 'saved' };
            })
          }
        >
          {making ? words.making : words.save}
        </button>
        {canSend({ files: [new File([''], 'a', { type })] }) ? (
          <button
            type="button"
            className="plain"
            disabled={waits || making}
            aria-label={`${title}: ${words.send}`}
            onClick={() =>
              withFile(({ name, content, type }) =>
                send({ files: [new File([content], name, { type })] }),
              )
            }
          >
            {words.send}
          </button>
        ) : null}
      </div>
      <OutcomeNote outcome={outcome} />
    </div>
  );
}
