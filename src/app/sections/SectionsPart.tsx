import { useId, useMemo, useState } from 'react';
import type { SectionKind } from '../../drawing/sections/cut.ts';
import { sectionKinds } from '../../drawing/sections/sectionKinds.ts';
import type { Job } from '../../job/job.ts';
import { oneSection } from '../../sheet/pages/oneSection.ts';
import { writeSvg } from '../../sheet/writeSvg.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { ChooseField } from '../ChooseField.tsx';
import { useLiveTakeoff, useWords } from '../SessionContext.ts';

/** Width that a section is laid out for, mm: its letters are then read on a phone. */
const WIDTH_MM = 92;

/** The sections of the job, one at a time, folded away until they are wanted: nothing is drawn before. */
export function SectionsPart({ station }: { readonly station: 'forms' | 'joints' }) {
  const words = useWords().app.sections;
  const { of, takeoff } = useLiveTakeoff();
  const [open, setOpen] = useState(false);
  const kinds = of ? sectionKinds(takeoff) : [];
  if (!of || kinds.length === 0) return null;
  return (
    <details className="sections" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.title}</summary>
      {open ? <Section job={of} takeoff={takeoff} kinds={kinds} first={FIRST[station]} /> : null}
    </details>
  );
}

/** What is looked at first at a station, when the job has it. */
const FIRST: Readonly<Record<'forms' | 'joints', readonly SectionKind[]>> = {
  forms: ['thickened', 'free'],
  joints: ['control-joint', 'existing-slab'],
};

interface SectionProps {
  readonly job: Job;
  readonly takeoff: Takeoff;
  readonly kinds: readonly SectionKind[];
  readonly first: readonly SectionKind[];
}

function Section({ job, takeoff, kinds, first }: SectionProps) {
  const { app, drawing, sheet } = useWords();
  const id = useId();
  const [chosen, setChosen] = useState<string | null>(null);
  const kind =
    kinds.find((one) => one === chosen) ?? first.find((one) => kinds.includes(one)) ?? kinds[0]!;
  const svg = useMemo(
    () => writeSvg(oneSection(kind, job, takeoff, WIDTH_MM, { drawing, sheet }), id),
    [kind, job, takeoff, drawing, sheet, id],
  );
  return (
    <>
      <ChooseField
        label={app.sections.choose}
        options={kinds.map((one) => [one, drawing.sections.titles[one]])}
        value={kind}
        onChoose={setChosen}
      />
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own SVG, in which every text is escaped */}
      <div className="section-drawing" dangerouslySetInnerHTML={{ __html: svg }} />
    </>
  );
}
