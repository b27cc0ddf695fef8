import { useId, useRef, useState } from 'react';
import type { Job } from '../../job/job.ts';
import { useWords } from '../SessionContext.ts';
import { reachOf } from './localAddress.ts';
import { OutcomeNote } from './OutcomeNote.tsx';
import { canSend, copyFrom, type Outcome, send } from './outcome.ts';
import { ownAddress, useJobLink } from './useJobLink.ts';

/** The job as a link: to copy, or to send from a phone. One that would be too long isn't made, and says why. */
export function LinkPart({ job }: { readonly job: Job }) {
  const words = useWords().app.handOver.link;
  const link = useJobLink(job);
  return (
    <section>
      <h3>{words.title}</h3>
      <p className="field-note">{words.says}</p>
      {link.is === 'making' ? <p role="status">{words.making}</p> : null}
      {link.is === 'failed' ? (
        <p className="field-error" role="alert">
          {words.failed(link.why)}
        </p>
      ) : null}
      {link.is === 'too-long' ? (
        <div className="note" data-weight="caution">
          <p>{words.tooLong(link.length, link.most)}</p>
          <p>
            {words.makesLong(
              link.parts
                .slice(0, 3)
                .map(({ part, length }) => words.part(part, length))
                .join(', '),
            )}
          </p>
        </div>
      ) : null}
      {link.is === 'link' ? (
        <MadeLink key={link.url} url={link.url} name={job.name} easy={link.easy} most={link.most} />
      ) : null}
    </section>
  );
}

interface MadeLinkProps {
  readonly url: string;
  readonly name: string;
  readonly easy: boolean;
  readonly most: number;
}

function MadeLink({ url, name, easy, most }: MadeLinkProps) {
  const words = useWords().app.handOver.link;
  const id = useId();
  const field = useRef<HTMLTextAreaElement>(null);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const data: ShareData = { url, ...(name ? { title: name } : {}) };
  return (
    <>
      <label className="visually-hidden" htmlFor={id}>
        {words.label}
      </label>
      <textarea id={id} ref={field} className="link-text" rows={2} readOnly value={url} />
      <p className="field-note">
        {words.length(url.length)} {easy ? null : words.notEasy(most)}{' '}
        {words.reach[reachOf(ownAddress())]}
      </p>
      <div className="button-row">
        <button
          type="button"
          className="main-button"
          onClick={async () => {
            if (field.current) setOutcome(await copyFrom(field.current));
          }}
        >
          {words.copy}
        </button>
        {canSend(data) ? (
          <button
            type="button"
            className="plain"
            onClick={async () => setOutcome(await send(data))}
          >
            {words.send}
          </button>
        ) : null}
      </div>
      <OutcomeNote outcome={outcome} />
    </>
  );
}
