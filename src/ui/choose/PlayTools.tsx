import type { WhyClosed } from '../../engine/goal/closed-pockets';
import type { PocketName } from '../../engine/table/pocket-shape';
import type { ChooseModel } from '../../state/choose/choose-model';
import { hindranceLines } from './shot-words';
import { ballLabel, POCKETS_TURNED, POCKETS_UPRIGHT, pocketWords } from './table-words';
import type { Board } from './use-board';
import './PlayTools.css';

/** The balls on the table, to choose the one to play. */
export function PlayTools({ choose }: { choose: ChooseModel }) {
  const { balls, goal } = choose.open.value;
  const objects = balls.flatMap(({ name }) => (name === 'cue' ? [] : [name])).sort((a, b) => a - b);
  return (
    <>
      <fieldset class="ball-palette">
        <legend class="visually-hidden">Ball to play</legend>
        {objects.map((name) => (
          <button
            key={name}
            type="button"
            class="palette-ball is-laid"
            aria-label={ballLabel(name)}
            aria-pressed={name === goal.ball}
            onClick={() => choose.playBall(name === goal.ball ? null : name)}
          >
            {name}
          </button>
        ))}
      </fieldset>
      {objects.length === 0 && <p>Lay the cue ball and a ball to play first.</p>}
      <Hindrances choose={choose} />
    </>
  );
}

function Hindrances({ choose }: { choose: ChooseModel }) {
  const shot = choose.shot.value;
  if (!shot?.ok) return null;
  const lines = hindranceLines(shot, choose.open.value.goal.ball);
  if (lines.length === 0) return null;
  return (
    <ul class="hindrances">
      {lines.map((line) => (
        <li key={line}>
          <span aria-hidden="true">▲</span> {line}
        </li>
      ))}
    </ul>
  );
}

/** The six pockets as they lie on the drawing; those the ball cannot go into say so. */
export function PocketSide({ choose, board }: { choose: ChooseModel; board: Board }) {
  const { isTurned } = board.map.value;
  const names = isTurned ? POCKETS_TURNED : POCKETS_UPRIGHT;
  return (
    <div class={isTurned ? 'side-buttons pockets is-turned' : 'side-buttons pockets'}>
      {names.map((name) => (
        <PocketButton key={name} choose={choose} name={name} />
      ))}
    </div>
  );
}

function PocketButton({ choose, name }: { choose: ChooseModel; name: PocketName }) {
  const isChosen = choose.open.value.goal.pocket === name;
  const why = choose.closed.value.get(name);
  const note = why && CLOSED_WORDS[why];
  return (
    <button
      type="button"
      class={note ? 'button side-button is-closed' : 'button side-button'}
      aria-label={`Into the ${pocketWords(name)} pocket${note ? `, ${note}` : ''}`}
      aria-pressed={isChosen}
      onClick={() => choose.playInto(isChosen ? null : name)}
    >
      <span>
        {pocketWords(name)}
        {note && <small>{note}</small>}
      </span>
    </button>
  );
}

const CLOSED_WORDS: Readonly<Record<WhyClosed, string>> = {
  'too-thin': 'too thin',
  'pocket-closed': 'no way in',
};
