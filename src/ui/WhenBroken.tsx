import { Component, type ComponentChildren } from 'preact';
import type { Models } from './app-models';

interface Props {
  readonly app: Models<'backup'>;
  readonly children: ComponentChildren;
}

/** Never a blank screen: where something cannot be shown, what is kept can still be saved. */
export class WhenBroken extends Component<Props, { readonly isBroken: boolean }> {
  static override getDerivedStateFromError() {
    return { isBroken: true };
  }

  render({ app, children }: Props) {
    if (!this.state.isBroken) return children;
    return (
      <main>
        <p>This cannot be shown. What you kept is still here.</p>
        <button type="button" class="button" onClick={() => void app.backup.out.save()}>
          Save a backup
        </button>
      </main>
    );
  }
}
