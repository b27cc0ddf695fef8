import { useState } from 'react';
import { UnderSlip } from '../places/UnderSlip.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { MeshList } from './MeshList.tsx';

/** Mesh of the truck and the yard, under the steel's ticket: closed until somebody needs it. */
export function MeshOnHand() {
  const words = useWords().app.mesh;
  const session = useSession();
  const [open, setOpen] = useState(false);
  const job = useAppState((state) => state.history.now.job);
  return (
    <UnderSlip title={words.title} open={open} onOpen={setOpen}>
      {() =>
        (['truck', 'yard'] as const).map((list) => (
          <MeshList
            key={list}
            list={list}
            job={job}
            onStock={(meshStock) => session.commit({ do: 'set-mesh-stock', meshStock })}
          />
        ))
      }
    </UnderSlip>
  );
}
