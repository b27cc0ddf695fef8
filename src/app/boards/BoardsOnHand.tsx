import { useState } from 'react';
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
    <details
      className="slip under-slip"
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <h2>{words.title}</h2>
      </summary>
      {open ? (
        <>
          <TruckPart {...part} />
          <YardPart {...part} />
        </>
      ) : null}
    </details>
  );
}
