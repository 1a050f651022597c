import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Stopped } from '../../engine/player/known-player';
import type { CopyResult } from '../../state/edit-result';
import type { WhatBecame } from '../../state/player/played-edits';
import type { PlayedShot } from '../../store/player';
import type { Models } from '../app-models';
import { loggedShot } from './AfterShot';
import { LoggedNews } from './LoggedNews';
import { ResultButtons } from './ResultButtons';
import './LevelTest.css';

interface Props {
  readonly app: Models<'player'>;
  readonly table: ComponentChildren;
  readonly shot: PlayedShot['shot'];
  /** Nothing can be said just now: buttons keep their place. */
  readonly isWaiting: boolean;
  /** Why there is nothing to play, or null. */
  readonly problem: string | null;
  /** On the buttons of a ball that went, where the cue ball was to stop somewhere. */
  readonly stops?: readonly (readonly [Stopped, string])[];
  /** What is said of the shot, of the last one logged. */
  words(logged: PlayedShot | null): ComponentChildren;
  log(became: WhatBecame, stopped: Stopped | null): CopyResult;
  onUndone?(logged: PlayedShot | null): void;
}

/** A shot to be laid and played, what became of it, and how to take that back. */
export function TrySheet(props: Props) {
  const { app, table, shot, isWaiting, problem, stops = [], words, log, onUndone } = props;
  const isScratched = useSignal(false);
  const loggedId = useSignal<string | null>(null);
  const notLogged = useSignal('');
  const logged = loggedShot(app.player, loggedId.value);
  return (
    <div class={isWaiting ? 'test-shot is-stale' : 'test-shot'}>
      {table}
      <div class="test-side">
        <div class="test-words" role="status">
          {words(logged)}
        </div>
        <LoggedNews
          app={app}
          logged={logged}
          problem={notLogged.value || (problem ?? '')}
          onUndone={() => onUndone?.(logged)}
        />
      </div>
      <ResultButtons
        shot={shot}
        result={null}
        isScratched={isScratched.value}
        isWaiting={isWaiting}
        stops={stops}
        onResult={(result, stopped) => {
          const scratched = isScratched.value;
          const made = log({ result, scratched, cueBall: null, asMeant: true }, stopped);
          loggedId.value = made.ok ? made.id : null;
          notLogged.value = made.ok ? '' : made.problem;
          if (made.ok) isScratched.value = false;
        }}
        onScratched={(scratched) => (isScratched.value = scratched)}
      />
    </div>
  );
}
