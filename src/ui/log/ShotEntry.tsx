import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { shotSketch } from '../../diagram/kit-sketch';
import type { ShotToLog } from '../../state/log/shot-to-log';
import type { WhatBecame } from '../../state/player/played-edits';
import type { PlayedShot } from '../../store/player';
import type { Models } from '../app-models';
import { KitPicture } from '../kit/KitPicture';
import { shotLine, toldResult } from './log-words';
import { ResultButtons } from './ResultButtons';
import { StoppedTable } from './StoppedTable';
import './ShotEntry.css';

interface Props {
  readonly app: Models<'player' | 'kit' | 'desk'>;
  readonly asked: ShotToLog;
  /** As it is logged; null before. */
  readonly logged: PlayedShot | null;
  /** Logs it, before it is. */
  onLog(became: WhatBecame): void;
  /** What has just been done, and how to undo it. */
  readonly children: ComponentChildren;
  /** What else can be done with it. */
  readonly more?: ComponentChildren;
}

/** One shot and what became of it: one tap logs it, and what can be said beside comes after. */
export function ShotEntry({ app, asked, logged, onLog, children, more }: Props) {
  const { player, kit, desk } = app;
  const isScratched = useSignal(false);
  const isMarking = useSignal(false);
  const correct = (part: Partial<WhatBecame>) => {
    if (logged) player.correct(logged.id, part);
  };
  const { lengthM } = kit.current.tables.value;
  // A shot set up on Shot alone lies nowhere on a table.
  const canMark = logged !== null && (logged.position ?? logged.cueBall) !== null;
  const isOnTable = canMark && isMarking.value;
  return (
    <div class="shot-entry">
      {!isOnTable && <KitPicture sketch={shotSketch(asked.shot.cutRad)} />}
      <div class="entry-head">
        <p class="place-note">{shotLine(logged ?? asked, desk.preferences.value, lengthM)}</p>
        {children}
        {logged && !canMark && (
          <p class="place-note">
            Where the cue ball stopped can be said of shots laid out on Choose.
          </p>
        )}
      </div>
      <div class="entry-foot">
        <div class="entry-more">
          {logged && (
            <>
              <button
                type="button"
                class="button"
                aria-pressed={!logged.asMeant}
                onClick={() => player.strikeOut(logged.id, logged.asMeant)}
              >
                Not as meant
              </button>
              {canMark && (
                <button
                  type="button"
                  class="button"
                  aria-expanded={isOnTable}
                  onClick={() => (isMarking.value = !isMarking.value)}
                >
                  {isOnTable ? 'Done' : 'Where it stopped'}
                </button>
              )}
              {more}
            </>
          )}
        </div>
        {isOnTable ? (
          <StoppedTable app={app} shot={logged} onStopped={(cueBall) => correct({ cueBall })} />
        ) : (
          <ResultButtons
            shot={asked.shot}
            result={logged && toldResult(logged)}
            isScratched={logged?.scratched ?? isScratched.value}
            onResult={(result) => {
              if (logged) return correct({ result });
              const scratched = isScratched.value;
              // The next shot of the same begins with nothing said.
              isScratched.value = false;
              isMarking.value = false;
              onLog({ result, scratched, cueBall: null, asMeant: true });
            }}
            onScratched={(scratched) => {
              if (logged) correct({ scratched });
              else isScratched.value = scratched;
            }}
          />
        )}
      </div>
    </div>
  );
}
