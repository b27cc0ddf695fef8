import { useMemo } from 'react';
import type { Station } from '../../takeoff/figure.ts';
import { isOn } from '../../takeoff/notes.ts';
import { ticketOf } from '../../takeoff/tickets.ts';
import { PlanStanding } from '../boards/PlanStanding.tsx';
import { JointStanding } from '../joints/JointStanding.tsx';
import { SteelStanding } from '../mesh/SteelStanding.tsx';
import { TimelinePart } from '../placing/TimelinePart.tsx';
import { useAppState, useLiveTakeoff, useWords } from '../SessionContext.ts';
import { SectionsPart } from '../sections/SectionsPart.tsx';
import { shownJob } from '../state.ts';
import { NoteList } from './NoteList.tsx';
import { Peek } from './Peek.tsx';
import { Slip } from './Slip.tsx';
import { Standing } from './Standing.tsx';

/** The ticket of one station: what is in the way, the figures, what to look out for, what was taken as so. */
export function TicketPanel({ station }: { readonly station: Station }) {
  const words = useWords().app;
  const live = useLiveTakeoff();
  const shown = useAppState(shownJob);
  // Figures are read with the job that they were figured from; only the units are today's.
  const { of, takeoff } = live;
  const ticket = useMemo(
    () => (of ? ticketOf(of, takeoff, station) : null),
    [of, takeoff, station],
  );
  const notes = live.takeoff.notes.filter(
    (note) => isOn(station, note) || concerns(note.station, note.weight, station),
  );
  const stopped = notes.some((note) => note.weight === 'stop');
  return (
    <>
      {ticket ? (
        <Peek ticket={ticket} units={shown.units} stopped={stopped} standing={live.standing} />
      ) : null}
      <article className="slip" data-standing={live.standing}>
        <header className="slip-head">
          <h2>{words.ticket.title(words.places[station])}</h2>
          <p>{[shown.name, shown.site].filter(Boolean).join(' · ')}</p>
        </header>
        <Standing />
        <NoteList notes={notes} weight="stop" units={shown.units} />
        {ticket ? <Slip ticket={ticket} units={shown.units} withheld={stopped} /> : null}
        {station === 'mix' ? <TimelinePart /> : null}
        {station === 'forms' ? <PlanStanding /> : null}
        {station === 'forms' || station === 'joints' ? <SectionsPart station={station} /> : null}
        {station === 'steel' ? <SteelStanding /> : null}
        {station === 'joints' ? <JointStanding /> : null}
        <NoteList notes={notes} weight="caution" units={shown.units} />
        <NoteList notes={notes} weight="assumption" units={shown.units} />
      </article>
    </>
  );
}

/** What stops the pour stops every station after it, so it is said on each of them. */
export function concerns(of: Station, weight: string, station: Station): boolean {
  return of === station || (weight === 'stop' && of === 'ground');
}
