import type { ChooseModel } from '../../state/choose/choose-model';
import { hindranceLines } from './shot-words';
import { ballLabel, POCKET_NAMES, pocketWords } from './table-words';

/** The balls on the table, to choose the one to play. */
export function PlayTools({ choose }: { choose: ChooseModel }) {
  const { balls, intent } = choose.open.value;
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
            aria-pressed={name === intent.ball}
            onClick={() => choose.playBall(name === intent.ball ? null : name)}
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
  const lines = hindranceLines(shot, choose.open.value.intent.ball);
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

/** The six pockets, as they lie seen from the break end. */
export function PocketSide({ choose }: { choose: ChooseModel }) {
  const { pocket } = choose.open.value.intent;
  return (
    <div class="side-buttons">
      {POCKET_NAMES.map((name) => (
        <button
          key={name}
          type="button"
          class="button side-button"
          aria-label={`Into the ${pocketWords(name)} pocket`}
          aria-pressed={name === pocket}
          onClick={() => choose.playInto(name === pocket ? null : name)}
        >
          {pocketWords(name)}
        </button>
      ))}
    </div>
  );
}
