import type { Station } from '../../takeoff/figure.ts';
import { BoardsOnHand } from '../boards/BoardsOnHand.tsx';
import { CornersPanel } from '../CornersPanel.tsx';
import { GroundReadings } from '../ground/GroundReadings.tsx';
import type { Desk } from '../jobs/desk.ts';
import { LayoutSection } from '../layout/LayoutSection.tsx';
import { MeshOnHand } from '../mesh/MeshOnHand.tsx';
import { OrderSection } from '../order/OrderSection.tsx';
import { AllowanceOffer } from '../pourDay/AllowanceOffer.tsx';
import { SpareOffer } from '../pourDay/SpareOffer.tsx';
import { PracticesPanel } from '../practices/PracticesPanel.tsx';
import { useAppState } from '../SessionContext.ts';
import { SketchArea } from '../SketchArea.tsx';
import { StakesPanel } from '../StakesPanel.tsx';
import { Guard } from '../Trouble.tsx';
import { TicketPanel } from '../ticket/TicketPanel.tsx';
import { Side } from './Side.tsx';
import { ToolBelt } from './ToolBelt.tsx';

interface SketchPlaceProps {
  readonly station: Station;
  readonly desk: Desk;
}

/** A station of the day: the sketch with its layer, the belt, and its ticket. */
export function SketchPlace({ station, desk }: SketchPlaceProps) {
  const jobId = useAppState((state) => state.jobId);
  const guardOf = `${jobId} ${station}`;
  return (
    <>
      <main className="site">
        <Guard of={guardOf} onExport={desk.exportOpen}>
          <SketchArea station={station} />
        </Guard>
      </main>
      <ToolBelt />
      <Side
        content={{
          ticket: () => (
            <Guard of={guardOf} onExport={desk.exportOpen}>
              <TicketPanel station={station} />
              {station === 'mix' ? (
                <>
                  <AllowanceOffer desk={desk} />
                  <GroundReadings />
                </>
              ) : null}
              {station === 'order' ? <SpareOffer desk={desk} /> : null}
              {station === 'steel' ? <MeshOnHand /> : null}
              {station === 'order' ? <OrderSection /> : null}
              {station === 'forms' ? (
                <>
                  <BoardsOnHand />
                  <LayoutSection />
                </>
              ) : null}
            </Guard>
          ),
          practices: () => <PracticesPanel />,
          corners: () => (
            <>
              {station === 'forms' ? <StakesPanel /> : null}
              <CornersPanel />
            </>
          ),
        }}
      />
    </>
  );
}
