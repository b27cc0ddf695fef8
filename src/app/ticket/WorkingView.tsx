import type { UnitStyle } from '../../job/job.ts';
import { sayWorking } from '../../sheet/words/say.ts';
import type { Working } from '../../takeoff/figure.ts';
import { useWords } from '../SessionContext.ts';

interface WorkingViewProps {
  readonly working: Working;
  readonly units: UnitStyle;
}

/** How a figure was reached: formula, what went in and where it comes from, steps, rounding, source. */
export function WorkingView({ working, units }: WorkingViewProps) {
  const words = useWords();
  const titles = words.app.ticket;
  const said = sayWorking(words.sheet, working, units);
  return (
    <dl className="working">
      <dt>{titles.formula}</dt>
      <dd>
        <span className="formula">{said.symbols}</span>
        <br />
        {said.formula}
      </dd>
      {said.inputs.length > 0 ? <dt>{titles.inputs}</dt> : null}
      {said.inputs.map(({ name, value, from }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: one input may stand there twice, in its own order
        <dd key={index} className="working-line">
          <span>
            {name} <span className="from">({from})</span>
          </span>
          <span>{value}</span>
        </dd>
      ))}
      {said.steps.length > 0 ? <dt>{titles.steps}</dt> : null}
      {said.steps.map(({ label, how, value }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: steps are in their own order and may be alike
        <dd key={index} className="working-line">
          <span>
            {label} <span className="from">{how}</span>
          </span>
          <span>{value}</span>
        </dd>
      ))}
      <dt>{titles.rounding}</dt>
      <dd>{said.rounding}</dd>
      <dt>{titles.source}</dt>
      <dd>{said.sources.join('; ')}</dd>
    </dl>
  );
}
