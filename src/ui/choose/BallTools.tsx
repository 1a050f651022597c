import type { Signal } from '@preact/signals';
import type { BallName } from '../../engine/lie/position';
import type { ChooseModel } from '../../state/choose/choose-model';
import { NudgePad } from './NudgePad';
import { ballLabel } from './table-words';
import type { Board } from './use-board';
import './BallTools.css';

const BALLS: readonly BallName[] = ['cue', 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  readonly isSnapping: Signal<boolean>;
}

/** Every ball, and what can be done with the one that is selected. */
export function BallTools(props: Props) {
  return (
    <>
      <BallPalette choose={props.choose} />
      <BallSide {...props} />
    </>
  );
}

/** All balls there are: one taken up here is put down by a tap on the table. */
function BallPalette({ choose }: { choose: ChooseModel }) {
  const selected = choose.selected.value;
  const { balls } = choose.open.value;
  return (
    <fieldset class="ball-palette">
      <legend class="visually-hidden">Balls</legend>
      {BALLS.map((name) => {
        const isLaid = balls.some((ball) => ball.name === name);
        return (
          <button
            key={name}
            type="button"
            class={isLaid ? 'palette-ball is-laid' : 'palette-ball'}
            aria-label={`${ballLabel(name)}${isLaid ? ', on the table' : ''}`}
            aria-pressed={name === selected}
            onClick={() => choose.select(name === selected ? null : name)}
          >
            <span>{name}</span>
          </button>
        );
      })}
    </fieldset>
  );
}

/** What can be done with the ball selected. */
function BallSide({ choose, board, isSnapping }: Props) {
  const selected = choose.selected.value;
  const isLaid = choose.open.value.balls.some(({ name }) => name === selected);
  const withSelected = (act: (name: BallName) => void) => () => {
    if (selected !== null) act(selected);
  };
  return (
    <>
      <div class="side-buttons">
        <button
          type="button"
          class="button"
          aria-pressed={isSnapping.value}
          onClick={() => {
            isSnapping.value = !isSnapping.peek();
          }}
        >
          Snap
        </button>
        <button
          type="button"
          class="button"
          disabled={!isLaid}
          onClick={withSelected(choose.freeze)}
        >
          Freeze
        </button>
        {isLaid || selected === null ? (
          <button
            type="button"
            class="button"
            disabled={!isLaid}
            onClick={withSelected(choose.takeOff)}
          >
            Take off
          </button>
        ) : (
          <button type="button" class="button" onClick={() => choose.putDown(selected)}>
            Put down
          </button>
        )}
      </div>
      <NudgePad choose={choose} board={board} mode="balls" what="ball" />
    </>
  );
}
