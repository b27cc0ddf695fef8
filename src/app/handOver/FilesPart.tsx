import { useCallback } from 'react';
import type { Job } from '../../job/job.ts';
import type { SheetPage } from '../../sheet/page.ts';
import { fileNameOf, jobToText } from '../../storage/files.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { useAppState, useWords } from '../SessionContext.ts';
import { keptChoice } from '../sheet/choice.ts';
import { layOut } from '../sheet/layOut.ts';
import { makePdf } from '../sheet/makePdf.ts';
import { FileRow, type MadeFile } from './FileRow.tsx';
import { makeJobCode } from './useJobCode.ts';

interface FilesPartProps {
  readonly job: Job;
  /** null while it isn't that of the job. */
  readonly takeoff: Takeoff | null;
  readonly pages: readonly SheetPage[] | null;
}

const JSON_TYPE = 'application/json';
const PDF_TYPE = 'application/pdf';

export function FilesPart({ job, takeoff, pages }: FilesPartProps) {
  const words = useWords();
  const says = words.app.handOver.files;
  const setOut = useAppState((state) => state.settingOut.choice);
  const speech = useAppState((state) => state.speech);
  const jobFile = useCallback(
    (): MadeFile => ({ name: fileNameOf(job, 'json'), content: jobToText(job), type: JSON_TYPE }),
    [job],
  );
  const pdf = useCallback(async (): Promise<MadeFile> => {
    if (!takeoff) throw new Error(words.app.handOver.wait);
    const choice = keptChoice(job.units);
    const laid = pages
      ? { pages }
      : layOut(job, takeoff, choice, setOut, speech, await makeJobCode(job));
    if ('failed' in laid) throw new Error(laid.failed);
    const content = await makePdf(laid.pages, job.name);
    return { name: fileNameOf(job, 'pdf'), content, type: PDF_TYPE };
  }, [job, takeoff, pages, setOut, speech, words]);
  return (
    <section>
      <h3>{says.title}</h3>
      <FileRow title={says.job} says={says.jobSays} type={JSON_TYPE} make={jobFile} />
      <FileRow
        title={says.pdf}
        says={says.pdfSays}
        waits={takeoff === null}
        type={PDF_TYPE}
        make={pdf}
      />
    </section>
  );
}
