import type { ComponentChildren } from 'preact';
import { type FanPath, layOutFan, layOutSpread, type SpreadView } from '../../diagram/table-fan';
import { type Box, boxAround } from '../../diagram/table-words';
import type { ChooseModel } from '../../state/choose/choose-model';
import { FAN_LETTERS } from './fan-words';
import { type Board, ballsOn } from './use-board';
import { Word } from './Word';

/** Names the bed's outline, within which zone and ring are drawn. */
export const BED_CLIP = 'fan-bed';

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  /** Words that stand already; balls are kept off besides. */
  readonly keepOff: readonly Box[];
  /** Drawn over the paths, and under the letters that name them. */
  readonly children: ComponentChildren;
}

/** Where the cue ball goes after a true, a thin and a full hit, and beyond; where it mostly rests. */
export function FanOverlay({ choose, board, keepOff, children }: Props) {
  const way = choose.chosen.value;
  if (way === null) return <>{children}</>;
  const map = board.map.value;
  const taken = [...keepOff, ...ballsOn(choose, board).map(boxAround)];
  const paths = layOutFan(choose.fan.value, map, board.canvas.value, taken);
  const name = choose.toLog.value === null ? 'fan is-old' : 'fan';
  return (
    <>
      <g class={name}>
        <Spread spread={layOutSpread(way.rest, map)} />
        {paths.map(({ hit, path }) => (
          <path key={hit} class={`fan-path is-${hit}`} d={path} />
        ))}
      </g>
      {children}
      <g class={name}>
        {paths.map((path) => (
          <FanEnd key={path.hit} path={path} />
        ))}
      </g>
    </>
  );
}

interface SpreadProps {
  readonly spread: SpreadView | null;
  /** Whether it is of the ball that is struck: crosses, told apart from the cue ball's dots by their shape. */
  readonly isStruck?: boolean;
}

export function Spread({ spread, isStruck = false }: SpreadProps) {
  if (spread === null) return null;
  const { dots } = spread;
  return (
    <g class={isStruck ? 'fan-spread struck-spread' : 'fan-spread'} clip-path={`url(#${BED_CLIP})`}>
      {isStruck ? (
        <path d={dots.map(({ x, y }) => `M${x - 3} ${y}h6m-3-3v6`).join('')} />
      ) : (
        dots.map(({ x, y }, index) => <circle key={`${index} ${x}`} cx={x} cy={y} r={1.4} />)
      )}
      {spread.ring && <circle class="fan-ring" {...spread.ring} />}
    </g>
  );
}

/** A dot where the cue ball rests, a cross where it is lost; a letter, led to where it stands off. */
export function FanEnd({ path: { hit, end, endKind, label, isLed } }: { path: FanPath }) {
  const isLost = endKind === 'pocketed' || endKind === 'off-table';
  return (
    <g class={`fan-end is-${hit}`}>
      {label && isLed && (
        <line class="fan-leader" x1={end.x} y1={end.y} x2={label.x} y2={label.y - 4} />
      )}
      {isLost ? (
        <path class="fan-lost" d={`M${end.x - 6} ${end.y - 6}l12 12m0 -12l-12 12`} />
      ) : (
        <circle class="fan-rest" cx={end.x} cy={end.y} r={4.5} />
      )}
      <Word label={label}>{FAN_LETTERS[hit]}</Word>
    </g>
  );
}
