import type { UnitStyle } from '../../job/job.ts';
import { sayQuantity } from '../../sheet/words/say.ts';
import type { Ticket } from '../../takeoff/figure.ts';
import { useSession, useWords } from '../SessionContext.ts';
import type { LiveTakeoff } from '../worker/live.ts';
import { EXPECTED } from './expected.ts';

interface PeekProps {
  readonly ticket: Ticket;
  readonly units: UnitStyle;
  /** Something is in the way of this station's figures. */
  readonly stopped: boolean;
  readonly standing: LiveTakeoff['standing'];
}

/** The ticket at a glance, for a phone on which it is let down: its two chief figures, or that they are withheld. */
export function Peek({ ticket, units, stopped, standing }: PeekProps) {
  const words = useWords();
  const { pull } = useSession();
  const says = words.app.ticket;
  const alert = standing !== 'current' ? says.notUpToDate : stopped ? says.inTheWay : null;
  return (
    <button type="button" className="peek" data-standing={standing} onClick={() => pull('half')}>
      {EXPECTED[ticket.station].slice(0, 2).map((key) => {
        const figure = ticket.figures.find((one) => one.key === key);
        return (
          <span key={key}>
            <span className="peek-name">{words.sheet.figures[key]}</span>
            <span className="figure-value">
              {figure ? sayQuantity(words.sheet, figure.value, units) : words.app.ticket.withheld}
            </span>
          </span>
        );
      })}
      {alert ? <span className="peek-stop">{alert}</span> : null}
    </button>
  );
}
