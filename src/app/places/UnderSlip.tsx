import type { ReactNode } from 'react';

interface UnderSlipProps {
  readonly title: string;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  /** Made only while it lies open. */
  readonly children: () => ReactNode;
}

/** What lies folded under a ticket until somebody needs it. */
export function UnderSlip({ title, open, onOpen, children }: UnderSlipProps) {
  return (
    <details
      className="slip under-slip"
      open={open}
      onToggle={(event) => {
        if (event.currentTarget.open !== open) onOpen(event.currentTarget.open);
      }}
    >
      <summary>
        <h2>{title}</h2>
      </summary>
      {open ? children() : null}
    </details>
  );
}
