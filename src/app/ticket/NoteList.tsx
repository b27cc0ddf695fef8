import type { UnitStyle } from '../../job/job.ts';
import { sayNote } from '../../sheet/words/say.ts';
import type { Note } from '../../takeoff/figure.ts';
import { useSession, useWords } from '../SessionContext.ts';
import { placeOfNote } from './placeOfNote.ts';

interface NoteListProps {
  readonly notes: readonly Note[];
  readonly weight: Note['weight'];
  readonly units: UnitStyle;
}

export function NoteList({ notes, weight, units }: NoteListProps) {
  const words = useWords();
  const titles = words.app.ticket;
  const session = useSession();
  const those = notes.filter((note) => note.weight === weight);
  if (those.length === 0) return null;
  return (
    <section>
      <h3 className="notes-title">{words.sheet.weights[weight]}</h3>
      <ul>
        {those.map((note, index) => {
          const place = placeOfNote(note, session.state.get().history.now.job);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: the same code may stand for several places
            <li key={`${note.code} ${index}`} className="note" data-weight={weight}>
              <p>{sayNote(words.sheet, note, units)}</p>
              {place ? (
                <button
                  type="button"
                  className="plain"
                  onClick={() => {
                    session.select(place.selection);
                    if (place.view) session.look(place.view);
                    session.pull('low');
                  }}
                >
                  {titles.show}
                </button>
              ) : null}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
