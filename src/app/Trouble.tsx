import { Component, type ReactNode } from 'react';
import { useSession, useWords } from './SessionContext.ts';

interface GuardProps {
  /** A change of this is a fresh start: another station, another job. */
  readonly of: string;
  readonly onExport: () => void;
  readonly children: ReactNode;
}

interface GuardState {
  readonly seen: string | null;
  readonly of: string;
}

/** The edge of a station: what fails inside stays inside, and the job is kept. React asks for a class here. */
export class Guard extends Component<GuardProps, GuardState> {
  override state: GuardState = { seen: null, of: this.props.of };

  static getDerivedStateFromError(error: unknown): Partial<GuardState> {
    return { seen: error instanceof Error ? error.message : String(error) };
  }

  static getDerivedStateFromProps(props: GuardProps, state: GuardState): GuardState | null {
    return props.of === state.of ? null : { seen: null, of: props.of };
  }

  override render() {
    if (this.state.seen === null) return this.props.children;
    return (
      <Trouble
        seen={this.state.seen}
        onAgain={() => this.setState({ seen: null })}
        onExport={this.props.onExport}
      />
    );
  }
}

interface TroubleProps {
  readonly seen: string;
  readonly onAgain: () => void;
  readonly onExport: () => void;
}

function Trouble({ seen, onAgain, onExport }: TroubleProps) {
  const words = useWords().app.trouble;
  const { undo } = useSession();
  return (
    <section className="trouble" role="alert">
      <h2>{words.title}</h2>
      <p>{words.says}</p>
      <div className="button-row">
        <button
          type="button"
          className="main-button"
          onClick={() => {
            undo();
            onAgain();
          }}
        >
          {words.back}
        </button>
        <button type="button" className="plain" onClick={onAgain}>
          {words.again}
        </button>
        <button type="button" className="plain" onClick={onExport}>
          {words.exportJob}
        </button>
      </div>
      <details>
        <summary>{words.seen}</summary>
        <p>{seen}</p>
      </details>
    </section>
  );
}
