import type { Practices } from '../../job/job.ts';
import type { Place } from '../places/places.ts';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { WeatherPart } from '../weather/WeatherPart.tsx';
import { FieldGroups } from './FieldGroups.tsx';
import { FieldRow } from './FieldRow.tsx';
import { FormDepthOffer } from './FormDepthOffer.tsx';
import { FIELDS } from './fields.ts';
import { FORM_GROUPS } from './formFields.ts';
import { MixFields } from './MixFields.tsx';
import { ORDER_GROUPS } from './orderFields.ts';
import { PLACING_GROUPS } from './placingFields.ts';
import { WasteExtras } from './WasteExtras.tsx';

const GROUPS = { forms: FORM_GROUPS, order: ORDER_GROUPS } as const;

/** Where the depth of the pour matters. */
const DEPTH_PLACES: readonly Place[] = ['ground', 'forms', 'mix'];

/** The practices that bear on the station at hand. */
export function PracticesPanel() {
  const words = useWords().app;
  const session = useSession();
  const place = useAppState((state) => state.place);
  const units = useAppState((state) => state.history.now.job.units);
  const practices = useAppState((state) => state.history.now.job.practices);

  function put(next: Practices) {
    session.commit({ do: 'set-practices', practices: next });
  }

  return (
    <section className="practices">
      <h2 className="visually-hidden">{words.practices.of(words.places[place])}</h2>
      <p className="field-note">{words.practices.intro}</p>
      {DEPTH_PLACES.includes(place) ? <FormDepthOffer onPractices={put} /> : null}
      {place === 'forms' || place === 'order' ? (
        <FieldGroups groups={GROUPS[place]} practices={practices} units={units} onPractices={put} />
      ) : (
        FIELDS[place]
          .filter(({ shown }) => shown?.(practices) ?? true)
          .map((field) => (
            <FieldRow
              key={field.key}
              field={field}
              practices={practices}
              units={units}
              onPractices={put}
            />
          ))
      )}
      {place === 'mix' ? (
        <>
          <WasteExtras practices={practices} units={units} onPractices={put} />
          <MixFields practices={practices} units={units} onPractices={put} />
          <WeatherPart />
          <FieldGroups
            groups={PLACING_GROUPS}
            practices={practices}
            units={units}
            onPractices={put}
          />
        </>
      ) : null}
    </section>
  );
}
