import { useSignal } from '@preact/signals';
import type { ShotToLog } from '../../state/log/shot-to-log';
import type { PlayedShot } from '../../store/player';
import type { Models } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { LoggedNews } from './LoggedNews';
import { ShotEntry } from './ShotEntry';

interface Props {
  readonly app: Models<'player' | 'kit' | 'desk' | 'router'>;
  /** What was played; null where there is nothing to be logged. */
  readonly asked: ShotToLog | null;
}

/** Right after a shot: what became of it, in one tap. */
export function AfterShot({ app, asked }: Props) {
  const { player, router } = app;
  const id = useSignal<string | null>(null);
  const problem = useSignal('');
  const logged = loggedShot(player, id.value);
  const shown = logged ?? asked;
  return (
    <>
      <PanelHeader router={router} title="How did it go?" />
      {shown === null ? (
        <p class="place-note">There is no shot with an aim here: nothing to log.</p>
      ) : (
        <ShotEntry
          app={app}
          asked={shown}
          logged={logged}
          onLog={(became) => {
            if (asked === null) return;
            const made = player.log({ ...asked, ...became, testId: null });
            id.value = made.ok ? made.id : null;
            problem.value = made.ok ? '' : made.problem;
          }}
        >
          <LoggedNews app={app} logged={logged} problem={problem.value} />
          {logged && <p class="place-note">Another result corrects it; Back for the next.</p>}
        </ShotEntry>
      )}
    </>
  );
}

/** Null where it is not there any more. */
export function loggedShot(
  { played }: Models<'player'>['player'],
  id: string | null,
): PlayedShot | null {
  return id === null ? null : (played.value.find((shot) => shot.id === id) ?? null);
}
