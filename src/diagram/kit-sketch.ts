/** How a line of a sketch is drawn: what would be, what is, what it is measured by. */
export type SketchLook = 'faint' | 'line' | 'bold' | 'ball' | 'object' | 'solid';

/** One line of a sketch, as an SVG path in its view box. */
export interface SketchLine {
  readonly d: string;
  readonly look: SketchLook;
}

export type Sketch = readonly SketchLine[];

/** The view box of every sketch, px. */
export const SKETCH_SIZE = { width: 72, height: 48 } as const;

const MIDDLE = SKETCH_SIZE.height / 2;

/** Angles are drawn so many times larger than they are: true ones could not be told apart. */
const SQUIRT_DRAWN = 9;
const THROW_DRAWN = 3;

/**
 * A cue beside the ball's centre, the way it points, and the way the ball goes.
 * @param slope of the ball's way against the cue's: tangent of the squirt
 */
export function cueSketch(slope: number): Sketch {
  const [ballX, r, aside] = [33, 9, 4];
  const rise = Math.min(20, (70 - ballX) * slope * SQUIRT_DRAWN);
  return [
    { look: 'faint', d: `M${ballX + r} ${MIDDLE}H70` },
    { look: 'line', d: `M${ballX} ${MIDDLE}L70 ${fixed(MIDDLE - rise)}` },
    { look: 'ball', d: disc(ballX, MIDDLE, r) },
    { look: 'solid', d: cue(ballX - Math.sqrt(r * r - aside * aside), MIDDLE + aside) },
  ];
}

/** A cue that ends at a tip, from the left edge. */
function cue(tipX: number, y: number): string {
  return `M0 ${y - 2.5}L${fixed(tipX)} ${y - 1.2}v2.4L0 ${y + 2.5}z`;
}

/** More table lengths than this are drawn as so many. */
const MOST_LENGTHS = 9;

/** A ball's run along a strip that is marked in table lengths. */
export function clothSketch(lengths: number): Sketch {
  const [from, perLength, r, y] = [7, 7, 5, 26];
  const to = from + perLength * Math.min(MOST_LENGTHS, lengths) - r;
  const marks = Array.from(
    { length: MOST_LENGTHS + 1 },
    (_, at) => `M${from + at * perLength - 5} 35v${at % 4 === 0 ? 7 : 4}`,
  );
  return [
    { look: 'faint', d: marks.join('') },
    { look: 'bold', d: `M2 ${y}H${fixed(Math.max(2, to))}` },
    { look: 'ball', d: disc(Math.max(from, to), y, r) },
  ];
}

/**
 * A quarter-ball hit: the line of centres, and the way that the object ball leaves.
 * @param throwRad off that line, towards where the cue ball was going
 */
export function ballsSketch(throwRad: number): Sketch {
  const [r, cut] = [8, Math.asin(0.75)];
  const [x, y] = [20, 36];
  const [objectX, objectY] = [x + 2 * r * Math.cos(cut), y - 2 * r * Math.sin(cut)];
  const way = (angle: number, length: number) => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const start = `${fixed(objectX + r * cos)} ${fixed(objectY - r * sin)}`;
    return `M${start}l${fixed(length * cos)} ${fixed(-length * sin)}`;
  };
  return [
    { look: 'faint', d: way(cut, 19) },
    { look: 'line', d: way(cut - Math.max(0, throwRad) * THROW_DRAWN, 26) },
    { look: 'line', d: `M0 ${y}H${x - r}` },
    { look: 'ball', d: disc(x, y, r) },
    { look: 'object', d: disc(objectX, objectY, r) },
  ];
}

/** How far a line of aim reaches on the drawing of a shot, px either way. */
const SHOT_REACH = { along: 34, across: 22 } as const;

/**
 * Cue ball, object ball and the way to the pocket, seen from above; straight on is to the right.
 * @param cutRad + sends the object ball right, which is down on the drawing
 */
export function shotSketch(cutRad: number): Sketch {
  const [r, ghostX] = [6, 36];
  const [cos, sin] = [Math.cos(cutRad), Math.sin(cutRad)];
  const { along, across } = SHOT_REACH;
  const reach = Math.min(along / Math.abs(cos), across / Math.abs(sin));
  const at = (away: number) => [ghostX + away * cos, MIDDLE + away * sin] as const;
  return [
    { look: 'faint', d: `M${2 * r} ${MIDDLE}H${ghostX}` },
    {
      look: 'line',
      d: `M${at(2 * r)
        .map(fixed)
        .join(' ')}L${at(reach).map(fixed).join(' ')}`,
    },
    { look: 'ball', d: disc(r + 1, MIDDLE, r) },
    { look: 'object', d: disc(...at(2 * r), r) },
  ];
}

/** px for a metre of table: the longest there is fits. */
const TABLE_PX = 17.5;

/**
 * A table to scale, and what a ball that rolls into its end has left.
 * @param rebound share of the speed that it rolls back with; its way back goes by the square of that
 */
export function tableSketch(lengthM: number, widthM: number, rebound: number): Sketch {
  const [width, height] = [lengthM * TABLE_PX, widthM * TABLE_PX];
  const [left, top] = [(SKETCH_SIZE.width - width) / 2, (SKETCH_SIZE.height - height) / 2];
  const end = left + width - 2;
  const onWay = width * 0.62;
  const back = onWay * rebound * rebound;
  return [
    {
      look: 'solid',
      d: box(left - 3, top - 3, width + 6, height + 6) + box(left, top, width, height),
    },
    { look: 'faint', d: `M${fixed(end - onWay)} ${MIDDLE - 2.5}H${fixed(end)}` },
    { look: 'line', d: `M${fixed(end)} ${MIDDLE + 2.5}H${fixed(end - back)}` },
    { look: 'ball', d: disc(end - back, MIDDLE + 2.5, 2.5) },
  ];
}

/** A ball over a rule: something is read. */
export const MEASURE_SKETCH: Sketch = [
  { look: 'faint', d: 'M36 4V30' },
  { look: 'line', d: 'M2 30H70M8 30v10M22 30v6M36 30v10M50 30v6M64 30v10' },
  { look: 'line', d: 'M36 20H40' },
  { look: 'ball', d: disc(48, 20, 8) },
];

/** Strokes about a line: somebody's scatter. */
export const PLAYER_SKETCH: Sketch = [
  { look: 'faint', d: 'M36 2V46' },
  {
    look: 'solid',
    d: [
      [35, 12],
      [41, 17],
      [31, 22],
      [37, 26],
      [45, 29],
      [28, 33],
      [36, 37],
    ]
      .map(([x = 0, y = 0]) => disc(x, y, 2.2))
      .join(''),
  },
  { look: 'object', d: disc(36, 25, 20) },
];

function disc(x: number, y: number, r: number): string {
  return `M${fixed(x - r)} ${fixed(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
}

function box(x: number, y: number, width: number, height: number): string {
  return `M${fixed(x)} ${fixed(y)}h${fixed(width)}v${fixed(height)}h${fixed(-width)}z`;
}

function fixed(px: number): string {
  return `${Number(px.toFixed(1))}`;
}
