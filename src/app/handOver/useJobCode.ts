import { useEffect, useState } from 'react';
import type { Job } from '../../job/job.ts';
import type { PrintedCode } from '../../sheet/code/jobCode.ts';
import { reachOf } from './localAddress.ts';
import { ownAddress } from './useJobLink.ts';

/** The code that opens a copy of a job. What makes it is loaded only now. Never fails: it says that there is none. */
export async function makeJobCode(job: Job): Promise<PrintedCode> {
  const address = ownAddress();
  if (reachOf(address) === 'device') return { is: 'no-address' };
  try {
    const [{ linkOf }, { codeOf }] = await Promise.all([
      import('../../storage/link/jobLink.ts'),
      import('../../sheet/code/jobCode.ts'),
    ]);
    const link = linkOf(job, address, 'digits');
    return link.is === 'link' ? codeOf(link.url) : { is: 'too-large' };
  } catch {
    return { is: 'failed' };
  }
}

/** The code of a job, once it is made; null for none. */
export function useJobCode(job: Job | null): PrintedCode | 'making' | null {
  const [made, setMade] = useState<{ readonly of: Job; readonly code: PrintedCode } | null>(null);
  useEffect(() => {
    if (!job) return;
    let gone = false;
    void makeJobCode(job).then((code) => {
      if (!gone) setMade({ of: job, code });
    });
    return () => {
      gone = true;
    };
  }, [job]);
  if (!job) return null;
  return made?.of === job ? made.code : 'making';
}
