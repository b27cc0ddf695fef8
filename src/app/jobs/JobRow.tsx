import { useEffect, useRef, useState } from 'react';
import { TEXT_MOST } from '../../job/textLimits.ts';
import type { JobListing } from '../../storage/jobs.ts';
import { useWords } from '../SessionContext.ts';
import { localeOf } from '../speech.ts';
import type { Desk } from './desk.ts';

interface JobRowProps {
  readonly job: JobListing;
  readonly isOpen: boolean;
  readonly desk: Desk;
  readonly onOpened: () => void;
}

export function JobRow({ job, isOpen, desk, onOpened }: JobRowProps) {
  const { app: words, language } = useWords();
  const [newName, setNewName] = useState<string | null>(null);
  const nameField = useRef<HTMLInputElement>(null);
  const renameButton = useRef<HTMLButtonElement>(null);
  const renaming = newName !== null;
  const wasRenaming = useRef(renaming);
  // The focus goes into the field and back, so that the keyboard never loses its place.
  useEffect(() => {
    if (wasRenaming.current === renaming) return;
    wasRenaming.current = renaming;
    if (renaming) nameField.current?.select();
    else renameButton.current?.focus();
  }, [renaming]);
  const name = job.name || words.head.unnamed;
  const when = new Intl.DateTimeFormat(localeOf(language), {
    dateStyle: 'medium',
    timeStyle: 'short',
  }).format(job.changed);

  if (newName !== null) {
    return (
      <li>
        <form
          className="rename"
          onSubmit={(event) => {
            event.preventDefault();
            desk.rename(job.id, newName.trim());
            setNewName(null);
          }}
        >
          <label className="field">
            {words.jobs.name}
            <input
              ref={nameField}
              value={newName}
              maxLength={TEXT_MOST.name}
              onChange={(event) => setNewName(event.currentTarget.value)}
            />
          </label>
          <div className="button-row">
            <button type="submit" className="main-button">
              {words.jobs.save}
            </button>
            <button type="button" className="plain" onClick={() => setNewName(null)}>
              {words.jobs.cancel}
            </button>
          </div>
        </form>
      </li>
    );
  }

  return (
    <li>
      <p className="job-row-name">{name}</p>
      <p className="field-note">
        {isOpen ? words.jobs.isOpen : words.jobs.changed(when)}
        {job.problems ? ` · ${words.jobs.unreadable}` : null}
      </p>
      <div className="button-row">
        {isOpen ? null : (
          <button
            type="button"
            className="main-button"
            aria-label={`${words.jobs.open}: ${name}`}
            onClick={async () => {
              if (await desk.open(job.id)) onOpened();
            }}
          >
            {words.jobs.open}
          </button>
        )}
        <button
          type="button"
          className="plain"
          ref={renameButton}
          aria-label={`${words.jobs.rename}: ${name}`}
          onClick={() => setNewName(job.name)}
        >
          {words.jobs.rename}
        </button>
        <button
          type="button"
          className="plain"
          aria-label={`${words.jobs.copy}: ${name}`}
          onClick={() => desk.copy(job.id, words.jobs.copyName)}
        >
          {words.jobs.copy}
        </button>
        <button
          type="button"
          className="plain danger"
          aria-label={`${words.jobs.remove}: ${name}`}
          onClick={() => desk.remove(job.id)}
        >
          {words.jobs.remove}
        </button>
      </div>
    </li>
  );
}
