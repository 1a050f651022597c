import { type Signal, useComputed } from '@preact/signals';
import type { BallName } from '../../engine/lie/position';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { BoardTouch } from './board-touch';
import { NudgePad } from './NudgePad';
import { ballLabel } from './table-words';
import type { Board } from './use-board';
import './BallTools.css';

const BALLS: readonly BallName[] = ['cue', 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  readonly isSnapping: Signal<boolean>;
  readonly touch: BoardTouch;
}

/** Every ball, and what can be done with the one that is selected. */
export function BallTools(props: Props) {
  return (
    <>
      <BallPalette {...props} />
      <BallSide {...props} />
    </>
  );
}

/** All balls there are: one taken up here is put down by a tap on the table, or dragged there. */
function BallPalette({ choose, touch }: Pick<Props, 'choose' | 'touch'>) {
  const { onPointerMove, onPointerUp, onPointerCancel } = touch;
  const selected = choose.selected.value;
  // By which lie there, not where: a ball that is dragged draws none of the buttons anew.
  const laid = useComputed(() => choose.open.value.balls.map(({ name }) => name).join(' '));
  const names = laid.value.split(' ');
  return (
    <fieldset class="ball-palette is-tray">
      <legend class="visually-hidden">Balls</legend>
      {BALLS.map((name) => {
        const isLaid = names.includes(`${name}`);
        return (
          <button
            key={name}
            type="button"
            class={isLaid ? 'palette-ball is-laid' : 'palette-ball'}
            aria-label={`${ballLabel(name)}${isLaid ? ', on the table' : ''}`}
            aria-pressed={name === selected}
            onPointerDown={(event) => touch.onPointerDown(event, name)}
            {...{ onPointerMove, onPointerUp, onPointerCancel }}
            onClick={(event) => {
              // A mouse's drag ends in a click; that of keys and readers has no detail.
              if (event.detail > 0 && touch.wasDragged()) return;
              choose.select(name === selected ? null : name);
            }}
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
  const isLaid = useComputed(() =>
    choose.open.value.balls.some(({ name }) => name === choose.selected.value),
  ).value;
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
