import type { Label } from '../../diagram/canvas';
import type { PocketName } from '../../engine/table/pocket-shape';
import type { PocketsTold } from './pockets-told';
import type { Board } from './use-board';
import { Word } from './Word';

interface Props {
  readonly board: Board;
  readonly told: PocketsTold;
  readonly words: ReadonlyMap<PocketName, Label>;
}

/** At each pocket how often the ball goes in; a cross over one that it does not go into. */
export function PocketMarks({ board, told, words }: Props) {
  if (told.size === 0) return null;
  return (
    <g class="pocket-marks">
      {board.rails.value.pockets.map(({ name, hole: { cx, cy, r } }) => {
        const one = told.get(name);
        if (!one) return null;
        return one.isClosed ? (
          <path
            key={name}
            class="pocket-cross"
            d={`M${cx - r} ${cy - r}l${2 * r} ${2 * r}m0 ${-2 * r}l${-2 * r} ${2 * r}`}
          />
        ) : (
          <Word key={name} label={words.get(name) ?? null}>
            {one.words}
          </Word>
        );
      })}
    </g>
  );
}
