import type { Models } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { loggedShot } from './AfterShot';
import { besideWords, dayHeading, timeWords } from './log-words';
import { ShotEntry } from './ShotEntry';

interface Props {
  readonly app: Models<'player' | 'kit' | 'desk' | 'nowMs' | 'router'>;
  readonly id: string;
}

/** One shot of the log: what became of it can be said otherwise, and it can be deleted. */
export function ShotPanel({ app, id }: Props) {
  const { player, router, nowMs } = app;
  const shot = loggedShot(player, id);
  if (shot === null) {
    return (
      <>
        <PanelHeader router={router} title="Shot" />
        <p>This one is no longer in the log.</p>
      </>
    );
  }
  const { atMs } = shot;
  const when = [dayHeading(atMs, nowMs()), timeWords(atMs)].filter((part) => part !== '');
  return (
    <>
      <PanelHeader router={router} title={`Shot: ${when.join(', ')}`} />
      <ShotEntry
        app={app}
        asked={shot}
        logged={shot}
        onLog={() => {}}
        more={
          <button
            type="button"
            class="button"
            onClick={() => {
              player.removeShot(id);
              router.close();
            }}
          >
            Delete
          </button>
        }
      >
        <p class="place-note">{besideWords(shot)}</p>
      </ShotEntry>
    </>
  );
}
