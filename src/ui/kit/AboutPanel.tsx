import type { Models } from '../app-models';
import { InstallHelp } from '../install/InstallHelp';
import { PanelHeader } from './PanelHeader';
import { Repaired, RepairPart } from './RepairPart';

/** What the app is and is not, and what to mind in a hall. */
export function AboutPanel({ app }: { app: Models<'repair' | 'install' | 'router'> }) {
  return (
    <>
      <PanelHeader router={app.router} title="About Leeway" />
      <div class="about-text">
        <Repaired repair={app.repair} />
        <p>
          Leeway works out where to point the cue when a shot carries side: how far the cue ball
          squirts, how far it swerves, and how far the object ball is thrown.
        </p>
        <p>
          Many leagues forbid a phone during a match. Look things up in practice, and ask before you
          play.
        </p>
        <p>
          A raised cue can tear cloth or send the ball off the table: ask the room’s owner first.
        </p>
        <p>
          An answer is as good as its numbers. Defaults are invented examples; yours may differ by
          more than a shot allows.
        </p>
        <p>Everything stays on this device. Nothing is sent anywhere.</p>
        {!app.install.isInstalled.value && (
          <section class="install-help" aria-labelledby="install-help">
            <h2 id="install-help">Have it as an app</h2>
            <InstallHelp app={app} />
          </section>
        )}
        <button
          type="button"
          class="button"
          data-opens="words"
          onClick={() => app.router.visit('kit', 'words')}
        >
          Words and lines explained
        </button>
        <RepairPart repair={app.repair} />
      </div>
    </>
  );
}
