import type { PlayedShot } from '../../store/player';
import type { Models } from '../app-models';
import { besideWords, resultWords } from './log-words';

interface Props {
  readonly app: Models<'player'>;
  readonly logged: PlayedShot | null;
  /** Why it could not be logged; empty where it could. */
  readonly problem: string;
  /** Told that it was taken back. */
  onUndone?(): void;
}

/** That a shot was logged, and a tap to take it back. */
export function LoggedNews({ app: { player }, logged, problem, onUndone }: Props) {
  return (
    <output class="undo-delete">
      {logged && (
        <>
          <span>Logged: {loggedWords(logged)}.</span>
          <button
            type="button"
            class="button"
            onClick={() => {
              player.takeBack(logged.id);
              onUndone?.();
            }}
          >
            <span aria-hidden="true">↶</span> Undo
          </button>
        </>
      )}
      {problem || player.problem.value}
    </output>
  );
}

function loggedWords(shot: PlayedShot): string {
  const beside = besideWords({
    ...shot,
    testId: null,
    drill: shot.drill?.rung ? shot.drill : null,
  });
  return [resultWords(shot).toLowerCase(), ...(beside === '' ? [] : [beside])].join(', ');
}
