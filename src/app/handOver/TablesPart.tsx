import { useCallback, useMemo } from 'react';
import type { Job } from '../../job/job.ts';
import { jobTables } from '../../sheet/csv/jobTables.ts';
import { fileNameOf } from '../../storage/files.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { download } from '../jobs/download.ts';
import { useWords } from '../SessionContext.ts';
import { CSV_TYPE } from './csvFile.ts';
import { FileRow, type MadeFile } from './FileRow.tsx';

interface TablesPartProps {
  readonly job: Job;
  readonly takeoff: Takeoff;
}

const ZIP_TYPE = 'application/zip';

/** Every table of every ticket as CSV: all in one zip, or one by one. */
export function TablesPart({ job, takeoff }: TablesPartProps) {
  const words = useWords();
  const says = words.app.handOver.tables;
  const tables = useMemo(() => jobTables(words.sheet, job, takeoff), [words, job, takeoff]);
  const all = useCallback(async (): Promise<MadeFile> => {
    const { zipOf } = await import('../../storage/zip.ts');
    const files = tables.map(({ fileName, text }) => ({ name: fileName, text }));
    return { name: fileNameOf(job, 'zip'), content: zipOf(files, new Date()), type: ZIP_TYPE };
  }, [job, tables]);
  return (
    <section>
      <h3>{says.title}</h3>
      {tables.length === 0 ? (
        <p className="field-note">{says.none}</p>
      ) : (
        <>
          <FileRow title={says.all} says={says.says} type={ZIP_TYPE} make={all} />
          <ul className="table-files">
            {tables.map(({ station, title, fileName, text }) => (
              <li key={fileName}>
                <span>{station ? `${words.sheet.stations[station]}: ${title}` : title}</span>
                <button
                  type="button"
                  className="plain"
                  aria-label={says.saveTable(title)}
                  onClick={() => download(fileName, text, CSV_TYPE)}
                >
                  {says.csv}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
