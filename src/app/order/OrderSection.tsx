import { useState } from 'react';
import { UnderSlip } from '../places/UnderSlip.tsx';
import { useAppState, useLiveTakeoff, useWords } from '../SessionContext.ts';
import { CostPart } from './CostPart.tsx';
import { ExtrasPart } from './ExtrasPart.tsx';
import { HoursPart } from './HoursPart.tsx';
import { PricesPart } from './PricesPart.tsx';
import { ProposalPart } from './ProposalPart.tsx';

type Part = 'prices' | 'extras' | 'hours' | 'proposal';
const PARTS: readonly Part[] = ['prices', 'extras', 'hours', 'proposal'];

/** What is typed for the order: prices, what else is bought, hours, and what the customer reads. */
export function OrderSection() {
  const words = useWords().app.order;
  const job = useAppState((state) => state.history.now.job);
  const { takeoff } = useLiveTakeoff();
  const [open, setOpen] = useState<readonly Part[]>([]);
  const { order } = takeoff;
  const body = (part: Part) => {
    switch (part) {
      case 'prices':
        return order ? <PricesPart job={job} order={order} /> : <p>{words.noOrder}</p>;
      case 'extras':
        return <ExtrasPart job={job} />;
      case 'hours':
        return <HoursPart job={job} />;
      case 'proposal':
        return <ProposalPart job={job} />;
    }
  };
  return (
    <>
      {order?.compare ? <CostPart compare={order.compare} /> : null}
      {PARTS.map((part) => (
        <UnderSlip
          key={part}
          title={words.parts[part]}
          open={open.includes(part)}
          onOpen={(isOpen) =>
            setOpen(isOpen ? [...open, part] : open.filter((one) => one !== part))
          }
        >
          {() => body(part)}
        </UnderSlip>
      ))}
    </>
  );
}
