import { useEffect, useState } from 'react';
import type { Job } from '../../job/job.ts';
import type { JobLink } from '../../storage/link/jobLink.ts';

export type MadeLink =
  | JobLink
  | { readonly is: 'making' }
  | { readonly is: 'failed'; readonly why: string };

/** The page's own address, without what stands behind its `#`. */
export function ownAddress(): string {
  return location.href.replace(/#.*$/s, '');
}

/** The link to a copy of a job, once it is packed. What packs it is loaded only now. */
export function useJobLink(job: Job): MadeLink {
  const [made, setMade] = useState<{ readonly of: Job; readonly link: MadeLink } | null>(null);
  useEffect(() => {
    let gone = false;
    const put = (link: MadeLink) => {
      if (!gone) setMade({ of: job, link });
    };
    import('../../storage/link/jobLink.ts').then(
      ({ linkOf }) => put(linkOf(job, ownAddress())),
      (error: unknown) =>
        put({ is: 'failed', why: error instanceof Error ? error.message : String(error) }),
    );
    return () => {
      gone = true;
    };
  }, [job]);
  return made?.of === job ? made.link : { is: 'making' };
}
