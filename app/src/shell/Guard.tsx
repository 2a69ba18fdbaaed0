import { Component, type ReactNode } from 'react';
import { saveFile } from '../files/saveFile.ts';
import { Button } from '../look/Button.tsx';
import { type Services, ServicesContext } from '../services.ts';

/** Stands in for a screen that broke: the work is not lost, and can be taken along. */
export class Guard extends Component<{ readonly children: ReactNode }, { readonly broken: boolean }> {
  static override contextType = ServicesContext;
  override state = { broken: false };

  static getDerivedStateFromError() {
    return { broken: true };
  }

  override render() {
    if (!this.state.broken) return this.props.children;
    const services = this.context as Services;
    return (
      <>
        <h1>This screen broke</h1>
        <p className="lead">
          The mistake is in the program, not in what you entered. What was on this device still is.
        </p>
        <div className="buttons">
          <Button look="strong" onClick={() => saveFile(services.session.now().project)}>
            Save as a file
          </Button>
          <Button onClick={() => window.location.reload()}>Open Kneewall anew</Button>
        </div>
      </>
    );
  }
}
