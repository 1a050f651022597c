import type { Models } from '../app-models';
import { apartWords, INSTALL_STEPS } from './install-words';
import './Install.css';

/** How to have the app on the home screen here, and what becomes of what is kept. */
export function InstallHelp({ app }: { app: Models<'install' | 'router'> }) {
  const { install } = app;
  const apart = apartWords(install.platform);
  return (
    <>
      {apart === null ? (
        <p>It then opens like any app, without a network, with everything you have kept here.</p>
      ) : (
        <ApartHelp app={app} words={apart} />
      )}
      {install.canAsk.value ? (
        <button type="button" class="button button-main" onClick={() => void install.ask()}>
          Install it
        </button>
      ) : (
        <p>{INSTALL_STEPS[install.platform]}</p>
      )}
    </>
  );
}

/** Where the installed app begins empty: a copy first. */
function ApartHelp({ app: { router }, words }: { app: Models<'router'>; words: string }) {
  return (
    <>
      <p>{words}</p>
      <button
        type="button"
        class="button"
        data-opens="backup"
        onClick={() => router.open('backup')}
      >
        Save a backup first
      </button>
    </>
  );
}
