// Why: a mistake of ours must not leave a white page: say so, keep what was written, offer the way back.
import { Component, type ReactNode } from 'react';

interface State {
  readonly message: string | undefined;
}

export class Mishap extends Component<{ children: ReactNode }, State> {
  override state: State = { message: undefined };

  static getDerivedStateFromError(error: unknown): State {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { message } = this.state;
    if (message === undefined) return this.props.children;
    return (
      <main className="lead" id="sheet">
        <h1>This page has made a mistake.</h1>
        <p>
          Nothing you wrote is lost: it is on this device or on the server. The mistake, for whoever mends it:
        </p>
        <p className="formula">{message}</p>
        <p className="row">
          <button type="button" className="chief" onClick={() => this.setState({ message: undefined })}>
            Try again
          </button>
          <a className="button" href="/">
            Go to the yard
          </a>
        </p>
      </main>
    );
  }
}
