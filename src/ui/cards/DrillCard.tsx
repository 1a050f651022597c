import { layOutTable } from '../../diagram/table-map';
import { layOutRails, pathThrough } from '../../diagram/table-rails';
import { type PicturedWay, pathsUntilFall } from '../../diagram/way-picture';
import { shapeOf } from '../../state/table-in-play';
import type { SavedPosition } from '../../store/saved-position';
import { CardPaper } from './CardPaper';

/** Something to play again and again, as it stands on a card. */
export interface Drill {
  readonly name: string;
  readonly position: Pick<SavedPosition, 'lengthM' | 'widthM' | 'balls' | 'goal' | 'zone'>;
  /** What all balls do until the one meant falls; left out: a straight line to the pocket. */
  readonly played?: Pick<PicturedWay, 'play' | 'falls'>;
  /** What to do, in sentences. */
  readonly words: readonly string[];
}

const WIDE = 1050;
const HIGH = 540;
const BALL = 22;
const DIAMOND = 9;
/** How many boxes there are to tick. */
const BOXES = 20;
const TICK = 'Tick a box for each one made.';

/** A drill on one side of a card. */
export function DrillCard({ drill }: { drill: Drill }) {
  const { name, words } = drill;
  const blocks = [
    { title: name },
    { drawing: HIGH },
    { lines: [...words, TICK] },
    { boxes: BOXES },
  ];
  return (
    <CardPaper label="Drill card" blocks={blocks}>
      <DrillTable {...drill} />
    </CardPaper>
  );
}

/** The table with its diamonds, balls larger than they are. */
function DrillTable({ position, played }: Pick<Drill, 'position' | 'played'>) {
  const { balls, goal, zone } = position;
  const map = layOutTable(position, { widthPx: WIDE, heightPx: HIGH, textPx: 30 });
  const { bedPath, diamonds, pockets } = layOutRails(shapeOf(position), map);
  const ballAt = (name: unknown) => balls.find((ball) => ball.name === name);
  const pocket = pockets.find((one) => one.name === goal.pocket)?.mouth;
  const way = [ballAt('cue'), ballAt(goal.ball)].flatMap((ball) =>
    ball ? [map.toPoint(ball)] : [],
  );
  const straight = pocket && way.length === 2 ? [pathThrough([...way, pocket])] : [];
  const paths = played ? pathsUntilFall(played, map).map(({ path }) => path) : straight;
  const ring = zone && map.toPoint(zone);
  return (
    <>
      <rect class="card-line" {...map.frame} rx={8} />
      <path class="card-line" d={bedPath} />
      {pockets.map(({ name, hole }) => (
        <circle key={name} class="card-fill" {...hole} />
      ))}
      <path
        class="card-fill"
        d={diamonds
          .map(
            ({ x, y }) =>
              `M${x} ${y - DIAMOND}l${DIAMOND} ${DIAMOND}-${DIAMOND} ${DIAMOND}-${DIAMOND}-${DIAMOND}z`,
          )
          .join('')}
      />
      {ring && zone && (
        <circle class="card-line" cx={ring.x} cy={ring.y} r={zone.radiusM * map.pxPerM} />
      )}
      {paths.map((path) => (
        <path key={path} class="card-line is-way" d={path} />
      ))}
      {balls.map((ball) => {
        const { x, y } = map.toPoint(ball);
        return (
          <g key={ball.name}>
            <circle class="card-ball" cx={x} cy={y} r={BALL} />
            {ball.name === 'cue' ? (
              <circle class="card-fill" cx={x} cy={y} r={BALL / 4} />
            ) : (
              <text class="card-text is-middle" x={x} y={y + BALL * 0.42} font-size={BALL * 1.2}>
                {ball.name}
              </text>
            )}
          </g>
        );
      })}
      <text class="card-text" x={map.endLabel.x} y={map.endLabel.y} font-size={26}>
        break end; from there, left is up
      </text>
    </>
  );
}
