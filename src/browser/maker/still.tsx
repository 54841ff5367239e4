import { Component, type JSX } from 'preact';

interface Props {
  /** What is drawn depends on these and on nothing else. */
  readonly on: readonly unknown[];
  readonly children: () => JSX.Element | null;
}

/** A part of the form that stays as it is drawn until one of the things it depends on is another. A pause in the typing draws only what changed. */
export class Still extends Component<Props> {
  override shouldComponentUpdate(next: Props): boolean {
    return next.on.length !== this.props.on.length || next.on.some((each, index) => each !== this.props.on[index]);
  }
  override render(): JSX.Element | null {
    return this.props.children();
  }
}
