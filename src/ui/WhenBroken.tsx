import { Component, type ComponentChildren } from 'preact';
import type { LateParts } from './app-models';

interface Props {
  readonly models: LateParts['models'];
  readonly children: ComponentChildren;
}

/** Never a blank screen: where something cannot be shown, what is kept can still be saved. */
export class WhenBroken extends Component<Props, { readonly isBroken: boolean }> {
  static override getDerivedStateFromError() {
    return { isBroken: true };
  }

  render({ models, children }: Props) {
    if (!this.state.isBroken) return children;
    return (
      <main>
        <p>This cannot be shown. What you kept is still here.</p>
        <button type="button" class="button" onClick={() => void saveBackup(models)}>
          Save a backup
        </button>
      </main>
    );
  }
}

async function saveBackup(models: LateParts['models']): Promise<void> {
  const app = await models.fetch();
  await app?.backup.out.save();
}
