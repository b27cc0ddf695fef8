import { useWords } from '../SessionContext.ts';
import { BatchCard } from './BatchCard.tsx';
import { BatchList } from './BatchList.tsx';
import { ForecastCard } from './ForecastCard.tsx';
import { FrontCard } from './FrontCard.tsx';
import { OnHandCard } from './OnHandCard.tsx';
import type { Awake } from './useAwake.ts';
import type { Pour } from './usePour.ts';

interface PourPartProps {
  readonly pour: Pour;
  readonly awake: Awake;
  readonly onAwake: () => void;
}

/** While it goes: the count, what it will come to, and how far it has got. */
export function PourPart({ pour, awake, onAwake }: PourPartProps) {
  const words = useWords().app.pourDay;
  const { outlook, takeoff } = pour;
  const { mix } = takeoff;
  return (
    <>
      <div className="pour-awake" data-is={awake}>
        <p role="status">{words.awake[awake]}</p>
        {awake === 'off' || awake === 'refused' ? (
          <button type="button" className="pour-button" onClick={onAwake}>
            {words.awake.again}
          </button>
        ) : null}
      </div>
      {outlook && mix ? (
        <div className="pour-columns">
          <div className="pour-column">
            <BatchCard pour={pour} outlook={outlook} mix={mix} />
            <ForecastCard pour={pour} outlook={outlook} />
          </div>
          <div className="pour-column">
            <FrontCard pour={pour} outlook={outlook} />
            <OnHandCard pour={pour} outlook={outlook} />
            <BatchList pour={pour} />
          </div>
        </div>
      ) : (
        <p className="pour-card" role="status">
          {words.waiting}
        </p>
      )}
    </>
  );
}
