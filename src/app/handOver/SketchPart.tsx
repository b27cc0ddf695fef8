import { useCallback, useMemo, useState } from 'react';
import type { Job } from '../../job/job.ts';
import { sketchPage } from '../../sheet/sketchPage.ts';
import { writeSvg } from '../../sheet/writeSvg.ts';
import { fileNameOf } from '../../storage/files.ts';
import type { Station } from '../../takeoff/figure.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { isStation, PLACES } from '../places/places.ts';
import { useAppState, useWords } from '../SessionContext.ts';
import { keptChoice } from '../sheet/choice.ts';
import { FileRow, type MadeFile } from './FileRow.tsx';
import { paintPng } from './paintPng.ts';

interface SketchPartProps {
  readonly job: Job;
  readonly takeoff: Takeoff;
}

const SVG_TYPE = 'image/svg+xml';
const PNG_TYPE = 'image/png';
const STATIONS = PLACES.filter(isStation);

/** The plan at the open station, to a stated scale, as a drawing and as a picture. */
export function SketchPart({ job, takeoff }: SketchPartProps) {
  const words = useWords();
  const says = words.app.handOver.sketch;
  const place = useAppState((state) => state.place);
  const [station, setStation] = useState<Station>(isStation(place) ? place : 'ground');
  const made = useMemo(() => {
    const { paper } = keptChoice(job.units);
    return sketchPage(job, takeoff, { station, paper, words });
  }, [job, takeoff, station, words]);
  const file = useCallback(
    async (ending: 'svg' | 'png'): Promise<MadeFile> => {
      if (!made) throw new Error(says.tooLarge);
      const svg = writeSvg(made.page, 'sketch');
      const name = fileNameOf({ name: `${job.name} ${words.sheet.stations[station]}` }, ending);
      return ending === 'svg'
        ? { name, content: svg, type: SVG_TYPE }
        : { name, content: await paintPng(svg, made.page), type: PNG_TYPE };
    },
    [made, job.name, station, words, says],
  );
  const svg = useCallback(() => file('svg'), [file]);
  const png = useCallback(() => file('png'), [file]);
  return (
    <section>
      <h3>{says.title}</h3>
      <p className="field-note">{made ? says.says(made.scale.name) : says.tooLarge}</p>
      <label className="field">
        {says.station}
        <select
          value={station}
          onChange={(event) => setStation(event.currentTarget.value as Station)}
        >
          {STATIONS.map((one) => (
            <option key={one} value={one}>
              {words.app.places[one]}
            </option>
          ))}
        </select>
      </label>
      <FileRow title={says.svg} says={says.svgSays} waits={!made} type={SVG_TYPE} make={svg} />
      <FileRow title={says.png} says={says.pngSays} waits={!made} type={PNG_TYPE} make={png} />
    </section>
  );
}
