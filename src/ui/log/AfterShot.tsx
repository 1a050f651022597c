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
  const ids = useSignal<readonly string[]>([]);
  const isNext = useSignal(false);
  const problem = useSignal('');
  const here = ids.value.flatMap((id) => loggedShot(player, id) ?? []);
  const last = here.at(-1) ?? null;
  const logged = isNext.value ? null : last;
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
            const made = player.log({ ...asked, ...became, testId: null, drill: null });
            if (made.ok) ids.value = [...ids.value, made.id];
            isNext.value = !made.ok && isNext.value;
            problem.value = made.ok ? '' : made.problem;
          }}
          more={
            asked && (
              <button type="button" class="button" onClick={() => (isNext.value = true)}>
                Same again
              </button>
            )
          }
        >
          <LoggedNews
            app={app}
            logged={last}
            problem={problem.value}
            onUndone={() => (isNext.value = here.length > 1)}
          />
          {last && (
            <p class="place-note">
              {here.length} logged.{' '}
              {logged ? 'Tap another result to put it right.' : 'Now tap how the next went.'}
            </p>
          )}
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
