import { ballPaths } from '../../../diagram/ball-paths';
import type { Point } from '../../../diagram/canvas';
import { layOutFan, layOutSpread } from '../../../diagram/table-fan';
import { aroundPoint, boxAround, placeWord } from '../../../diagram/table-words';
import { pathsUntilFall } from '../../../diagram/way-picture';
import { isSafety, type ShownWay, shotOf } from '../../../state/choose/all-ways/shown-way';
import type { ChooseModel } from '../../../state/choose/choose-model';
import { Line } from '../../drawing-parts';
import { FanEnd, Spread } from '../FanOverlay';
import { cueBallFirst } from '../fan-words';
import { type Board, ballsOn } from '../use-board';
import { Word } from '../Word';
import { aimedAt } from './aim-line';
import { diamondsWords } from './rail-words';
import { BallPaths, meantBall } from './WayPicture';

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  readonly way: ShownWay;
  /** Whether the cue's line is drawn, in place of what comes of a thin or full hit. */
  readonly isAiming: boolean;
}

/** A way drawn over the table: every ball's path when all is as meant; with it the fan, or the aim. */
export function AllWayOverlay({ choose, board, way, isAiming }: Props) {
  return (
    <g class={choose.all.isMoved.value ? 'fan is-old' : 'fan'}>
      <MeantPaths choose={choose} board={board} way={way} isAiming={isAiming} />
      {isAiming || <Fan choose={choose} board={board} way={way} />}
      {(isAiming || isBrought(way)) && <AimLine choose={choose} board={board} way={way} />}
    </g>
  );
}

/** Of the cue ball, the fan draws its own. */
function MeantPaths({ choose, board, way: { told, fan }, isAiming }: Props) {
  const meant = fan.find(({ hit }) => hit === 'true');
  if (!meant) return null;
  const balls = cueBallFirst(choose.open.value.balls);
  const falls = balls.findIndex(({ name }) => name === meantBall(told));
  const { play } = meant;
  const map = board.map.value;
  const paths = isAiming ? pathsUntilFall({ play, falls }, map) : ballPaths(play, map);
  return <BallPaths paths={paths.filter(({ ball }) => isAiming || ball !== 0)} falls={falls} />;
}

/** A way that came from elsewhere is laid as it comes. */
const isBrought = (way: ShownWay) =>
  !isSafety(way) && way.does !== undefined && shotOf(way) === null;

type Drawn = Omit<Props, 'isAiming'>;

function Fan({ choose, board, way }: Drawn) {
  const { told, fan } = way;
  const map = board.map.value;
  const paths = layOutFan(fan, map, board.canvas.value, ballsOn(choose, board).map(boxAround));
  return (
    <>
      <Spread spread={layOutSpread(told.rest, map)} />
      {isSafety(way) && <Spread isStruck spread={layOutSpread(way.told.struck.rest, map)} />}
      {paths.map(({ hit, path }) => (
        <path key={hit} class={`fan-path is-${hit}`} d={path} />
      ))}
      {paths.map((path) => (
        <FanEnd key={path.hit} path={path} />
      ))}
    </>
  );
}

/** Half of the mark across the nose, px. */
const MARK_PX = 9;

/** From the cue ball to the named point on the rail. */
function AimLine({ choose, board, way: { told } }: Drawn) {
  const point = aimedAt(choose, told);
  const cueBall = choose.open.value.balls.find(({ name }) => name === 'cue');
  if (!point || !cueBall) return null;
  const map = board.map.value;
  const canvas = board.canvas.value;
  const [from, to] = [map.toPoint(cueBall), map.toPoint(point.spot)];
  const word = diamondsWords(point);
  const along = steps(from, to).map(({ x, y }) => boxAround({ cx: x, cy: y, r: MARK_PX / 2 }));
  const taken = [...ballsOn(choose, board).map(boxAround), ...along];
  const label = word && placeWord(word, aroundPoint(to, word, canvas.textPx), canvas, taken);
  return (
    <>
      <Line segment={{ from, to }} class="board-aim" />
      <path
        class="aim-mark"
        d={`M${to.x - MARK_PX} ${to.y}h${2 * MARK_PX}M${to.x} ${to.y - MARK_PX}v${2 * MARK_PX}`}
      />
      <Word label={label || null}>{word}</Word>
    </>
  );
}

const STEPS = 40;

/** Points along a line, its ends left out. */
function steps(from: Point, to: Point): readonly Point[] {
  return Array.from({ length: STEPS - 1 }, (_, at) => {
    const share = (at + 1) / STEPS;
    return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
  });
}
