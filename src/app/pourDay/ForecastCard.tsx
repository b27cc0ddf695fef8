import type { Advice, Outlook } from '../../takeoff/pourDay/outlook.ts';
import { formatNumber } from '../../units/format.ts';
import { useWords } from '../SessionContext.ts';
import type { pourDayEn } from '../words/pourDayEn.ts';
import { nameOfMix } from './sayBags.ts';
import type { Pour } from './usePour.ts';

interface ForecastCardProps {
  readonly pour: Pour;
  readonly outlook: Outlook;
}

/** Bags used and left, what the whole pour will take, and what to do about it. */
export function ForecastCard({ pour, outlook }: ForecastCardProps) {
  const words = useWords().app.pourDay;
  const says = words.forecast;
  const { mixes } = pour.job.practices.mix;
  const { total, advice, placed, progress, plan } = outlook;
  const [used, left] = [sumOf('used'), sumOf('left')];
  const [least, most] = [Math.floor(total.least + 1e-9), Math.ceil(total.most - 1e-9)];
  return (
    <section className="pour-card pour-forecast" data-advice={advice.is}>
      <h2>{says.title}</h2>
      <p className="pour-advice" role="status">
        {sayAdvice(says, advice)}
      </p>
      {advice.is === 'short' && advice.late !== undefined ? (
        <p>{says.late(String(Math.ceil(advice.late)))}</p>
      ) : null}
      <dl className="pour-figures">
        <div>
          <dt>{says.used}</dt>
          <dd>{formatNumber(used, 1)}</dd>
        </div>
        <div>
          <dt>{says.left}</dt>
          <dd>{formatNumber(left, 1)}</dd>
        </div>
        <div>
          <dt>{says.total}</dt>
          <dd>{formatNumber(total.expected, 0)}</dd>
        </div>
      </dl>
      <p>
        {least === most ? null : `${says.band(String(least), String(most))}. ${says.fourOfFive} `}
        {placed === null ? says.atPlan : says.plan(formatNumber(plan.bags, 0))}
      </p>
      <ul>
        {progress.bags.map(({ mix, opened, left: unopened }) => (
          <li key={mix}>
            {says.byMix(nameOfMix(mix, mixes), String(opened), formatNumber(unopened, 1))}
          </li>
        ))}
      </ul>
    </section>
  );

  /** Over all mixes, as they are counted. */
  function sumOf(what: 'used' | 'left'): number {
    return progress.bags.reduce((sum, one) => sum + one[what], 0);
  }
}

function sayAdvice(says: (typeof pourDayEn)['forecast'], advice: Advice): string {
  switch (advice.is) {
    case 'enough':
      return says.enough(formatNumber(advice.left, 0));
    case 'watch':
      return says.watch(String(advice.send));
    case 'short': {
      const send = String(advice.send);
      const short = says.short(formatNumber(advice.short, 1));
      if (advice.within === undefined) return `${says.send(send)}. ${short}.`;
      return advice.within < 1
        ? `${says.sendNow(send)}. ${short}.`
        : `${says.sendWithin(send, String(Math.floor(advice.within)))}. ${short}.`;
    }
  }
}
