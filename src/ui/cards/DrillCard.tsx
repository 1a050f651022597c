import { layOutDrill } from '../../diagram/drill-view';
import { layOutTable } from '../../diagram/table-map';
import { layOutRails } from '../../diagram/table-rails';
import { shapeOf } from '../../state/table-in-play';
import type { SavedPosition } from '../../store/saved-position';
import { CardPaper } from './CardPaper';

/** Something to play again and again, as it stands on a card. */
export interface Drill {
  readonly name: string;
  readonly position: Pick<
    SavedPosition,
    'lengthM' | 'widthM' | 'balls' | 'goal' | 'zone' | 'drill'
  >;
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
export function DrillCard({ drill: { name, position, words } }: { drill: Drill }) {
  const blocks = [
    { title: name },
    { drawing: HIGH },
    { lines: [...words, TICK] },
    { boxes: BOXES },
  ];
  return (
    <CardPaper label="Drill card" blocks={blocks}>
      <DrillTable position={position} />
    </CardPaper>
  );
}

/** The table with its diamonds, balls larger than they are. */
function DrillTable({ position }: Pick<Drill, 'position'>) {
  const { zone, drill } = position;
  const shape = shapeOf(position);
  const map = layOutTable(position, { widthPx: WIDE, heightPx: HIGH, textPx: 30 });
  const { bedPath, diamonds, pockets } = layOutRails(shape, map);
  const isPointed = drill && drill.kind !== 'direct';
  const { path, balls } = layOutDrill(position, isPointed ? drill.stroke.aimRad : null, shape, map);
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
      <path class="card-line is-way" d={path} />
      {balls.map(({ name, x, y }) => (
        <g key={name}>
          <circle class="card-ball" cx={x} cy={y} r={BALL} />
          {name === 'cue' ? (
            <circle class="card-fill" cx={x} cy={y} r={BALL / 4} />
          ) : (
            <text class="card-text is-middle" x={x} y={y + BALL * 0.42} font-size={BALL * 1.2}>
              {name}
            </text>
          )}
        </g>
      ))}
      <text class="card-text" x={map.endLabel.x} y={map.endLabel.y} font-size={26}>
        break end; from there, left is up
      </text>
    </>
  );
}
