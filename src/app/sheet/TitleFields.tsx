import type { Title } from '../../job/job.ts';
import { TEXT_MOST } from '../../job/textLimits.ts';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { TextField } from './TextField.tsx';

const NOTHING: Title = { drawnBy: '', revision: '', replaces: '' };
/** Ways to north that can be chosen, degrees clockwise from the top of the sketch. */
const WAYS = Array.from({ length: 24 }, (_, i) => i * 15);

/** What stands in the title block besides job and site, and where north is. */
export function TitleFields() {
  const words = useWords().app.sheet;
  const { commit } = useSession();
  const title = useAppState((state) => state.history.now.job.title) ?? NOTHING;
  const set = (change: Partial<Title>) =>
    commit({ do: 'set-title', title: { ...title, ...change } });
  const { north } = title;
  const ways = north === undefined || WAYS.includes(north) ? WAYS : [...WAYS, north];

  function setNorth(typed: string) {
    const { north: _, ...rest } = title;
    commit({
      do: 'set-title',
      title: typed === '' ? rest : { ...rest, north: Number(typed) },
    });
  }

  return (
    <>
      {(['drawnBy', 'revision', 'replaces'] as const).map((field) => (
        <TextField
          key={field}
          label={words.titleBlock[field]}
          text={title[field]}
          most={TEXT_MOST.title}
          onText={(text) => set({ [field]: text })}
        />
      ))}
      <label className="field">
        {words.north}
        <select value={north ?? ''} onChange={(event) => setNorth(event.currentTarget.value)}>
          <option value="">{words.northNotSet}</option>
          {ways.map((way) => (
            <option key={way} value={way}>
              {words.northWay(way)}
            </option>
          ))}
        </select>
      </label>
    </>
  );
}
