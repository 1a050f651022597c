import type { Models } from '../app-models';
import { InstallHelp } from './InstallHelp';

/** Once something has been measured: how not to lose it. Goes for good when told to. */
export function InstallHint({ app }: { app: Models<'install' | 'router'> }) {
  const { install } = app;
  if (!install.isDue.value) return null;
  return (
    <section class="install-hint" aria-labelledby="install-hint">
      <h2 id="install-hint">Have it as an app</h2>
      <InstallHelp app={app} />
      <button
        type="button"
        class="button"
        onClick={() => {
          install.dismiss();
          // The button goes; the keyboard stays on the page.
          document.querySelector<HTMLElement>('h1')?.focus();
        }}
      >
        Not now
      </button>
    </section>
  );
}
