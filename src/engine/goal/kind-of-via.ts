import type { Step, WayKind } from './goal';

/** Whether two steps are the same. */
function isStep(one: Step, other: Step): boolean {
  if (one.by !== other.by) return false;
  if ('ball' in one) return 'ball' in other && one.ball === other.ball;
  return 'cushion' in other && one.cushion === other.cushion;
}

/** Whether the same things happen, in the same order. */
export function isSameVia(one: readonly Step[], other: readonly Step[]): boolean {
  return one.length === other.length && one.every((step, at) => isStep(step, other[at] ?? step));
}

/** Most cushions that a bank or a kick goes by. */
const MOST_CUSHIONS = 2;

/** How a ball falls to which this has happened; null where no kind of way goes like that. */
export function kindOfVia(via: readonly Step[], ball: number): WayKind | null {
  const cushions = via.findIndex((step) => 'ball' in step);
  const struck = via[cushions];
  if (struck === undefined || !('ball' in struck) || struck.by !== 'cue') return null;
  const rest = via.slice(cushions + 1);
  if (cushions > 0) {
    return cushions <= MOST_CUSHIONS && struck.ball === ball && rest.length === 0 ? 'kick' : null;
  }
  if (rest.length === 0) return struck.ball === ball ? 'direct' : null;
  if (isBank(rest, struck.ball, ball)) return 'bank';
  const [only] = rest;
  return rest.length === 1 && only !== undefined ? byAnotherBall(only, struck.ball, ball) : null;
}

/** Of a ball struck and one thing more. */
function byAnotherBall(step: Step, struck: number, ball: number): WayKind | null {
  if ('cushion' in step) return null;
  if (struck === ball) return step.by === ball ? 'carom' : null;
  if (step.ball !== ball) return null;
  if (step.by === 'cue') return 'carom';
  return step.by === struck ? 'combination' : null;
}

/** Off one cushion or two, and by the cue ball again at most once, after the first of them. */
function isBank(rest: readonly Step[], struck: number, ball: number): boolean {
  const cushions = rest.filter((step) => 'cushion' in step);
  const [first] = rest;
  return (
    struck === ball &&
    first !== undefined &&
    'cushion' in first &&
    cushions.length <= MOST_CUSHIONS &&
    cushions.every(({ by }) => by === ball) &&
    rest.length - cushions.length <= 1 &&
    rest.every((step) => 'cushion' in step || (step.ball === ball && step.by === 'cue'))
  );
}

/** Whether cue ball and object ball meet twice. */
export function isDoubleKiss(via: readonly Step[]): boolean {
  return via.some((step, at) =>
    via.slice(at + 1).some((later) => 'ball' in step && isStep(step, later)),
  );
}
