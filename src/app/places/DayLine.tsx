import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { PlaceIcon } from './PlaceIcon.tsx';
import { PLACES } from './places.ts';

/** The stations of the day, staked along a chalk line in the order in which the work goes. */
export function DayLine() {
  const words = useWords().app;
  const place = useAppState((state) => state.place);
  const { go } = useSession();
  return (
    <nav className="day" aria-label={words.day}>
      <ol>
        {PLACES.map((one) => (
          <li key={one}>
            <button
              type="button"
              aria-current={one === place ? 'page' : undefined}
              onClick={() => go(one)}
            >
              <PlaceIcon place={one} />
              <span>{words.places[one]}</span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
