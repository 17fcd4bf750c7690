import { Component, type ComponentChildren } from 'preact';
import { BeforePage } from './before-page.tsx';
import type { Told } from './words.ts';

interface DrawnProps {
  /** What to say in its place. */
  readonly broken: Told;
  readonly children: ComponentChildren;
}

/** What breaks as it is drawn is told in its place, and a press reloads the page; what was said is kept meanwhile. */
export class Drawn extends Component<DrawnProps, { readonly broken: boolean }> {
  override state = { broken: false };

  override componentDidCatch(error: unknown): void {
    console.error(error);
    this.setState({ broken: true });
  }

  override render(): ComponentChildren {
    if (!this.state.broken) return this.props.children;
    return <BeforePage told={this.props.broken} onPress={() => location.reload()} />;
  }
}
