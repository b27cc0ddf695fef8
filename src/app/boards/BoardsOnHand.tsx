import { useState } from 'react';
import { UnderSlip } from '../places/UnderSlip.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import type { BoardsPartProps } from './boardsPartProps.ts';
import { TruckPart } from './TruckPart.tsx';
import { YardPart } from './YardPart.tsx';

/** What is on the truck and what the yard sells, under the forms' ticket: closed until somebody needs it. */
export function BoardsOnHand() {
  const words = useWords().app.boards;
  const session = useSession();
  const [open, setOpen] = useState(false);
  const job = useAppState((state) => state.history.now.job);
  const part: BoardsPartProps = {
    job,
    onLumber: (lumber) => {
      session.commit({ do: 'set-lumber', lumber });
      return session.state.get().history.now.job.lumber === lumber;
    },
  };
  return (
    <UnderSlip title={words.title} open={open} onOpen={setOpen}>
      {() => (
        <>
          <TruckPart {...part} />
          <YardPart {...part} />
        </>
      )}
    </UnderSlip>
  );
}
