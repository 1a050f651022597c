import type { Circle } from './canvas';
import type { Segment } from './overhead-view';
import type { BallKind, TableSpot, TrialScene } from './trial-scene';

/** The balls of a set-up close up. Lengths in radii of a ball, y downwards as in a drawing. */
export interface TrialLens {
  /** x, y, width and height of what is in view. */
  readonly viewBox: readonly [number, number, number, number];
  readonly balls: readonly { readonly kind: BallKind; readonly circle: Circle }[];
  readonly aim: Segment | null;
  /** Between the near sides of the cue ball and of the ball before it. */
  readonly gap: Segment;
}

/** Clear radii about the balls. */
const MARGIN = 0.6;

/** Looks at the balls of a scene through a lens; null where they are not near each other. */
export function layOutTrialLens({ balls, aim, ballRadiusM }: TrialScene): TrialLens | null {
  const cue = balls.find(({ kind }) => kind === 'cue');
  const next =
    balls.find(({ kind }) => kind === 'ghost') ?? balls.find(({ kind }) => kind === 'object');
  if (!cue || !next || !aim) return null;
  const inRadii = ({ xM, yM }: TableSpot) => ({ x: xM / ballRadiusM, y: -yM / ballRadiusM });
  const spots = balls.map(({ at }) => inRadii(at));
  const left = Math.min(...spots.map(({ x }) => x)) - 1 - MARGIN;
  const right = Math.max(...spots.map(({ x }) => x)) + 1 + MARGIN;
  const top = Math.min(...spots.map(({ y }) => y)) - 1 - MARGIN;
  const bottom = Math.max(...spots.map(({ y }) => y)) + 1 + MARGIN;
  const [from, to] = [inRadii(cue.at), inRadii(next.at)];
  const apart = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / apart, y: (to.y - from.y) / apart };
  return {
    viewBox: [left, top, right - left, bottom - top],
    balls: balls.map(({ kind, at }) => {
      const { x, y } = inRadii(at);
      return { kind, circle: { cx: x, cy: y, r: 1 } };
    }),
    aim: { from: inRadii(aim.from), to: inRadii(aim.to) },
    gap: {
      from: { x: from.x + along.x, y: from.y + along.y },
      to: { x: to.x - along.x, y: to.y - along.y },
    },
  };
}
