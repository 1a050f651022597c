import type { Kit } from '../../../src/engine/kit/kit';
import { bedBounce } from './bed-bounce';
import type { Body } from './body';
import { gripped, landed, type Motion, nextMotion, nextStretch, spunOut } from './cue-ball-path';
import { type Coordinates, toBody, toCoordinates } from './forces';
import { FINE } from './play-shot';
import type { Stretch } from './stretch';

/** A ball on its way through a stretch of one law of force. */
export interface Runner {
  readonly ball: Coordinates;
  readonly motion: Motion;
  /** Null: it rests. */
  readonly stretch: Stretch | null;
  /** To the end of the stretch, s. */
  readonly leftS: number;
}

/** A ball just after a blow: the bed answers first. */
export function startAgain(body: Body, kit: Kit): Runner {
  const ball = toCoordinates(bedBounce(body, kit, FINE.restSpeedMps));
  return begun(ball, 'flying', kit);
}

function begun(ball: Coordinates, last: Motion, kit: Kit): Runner {
  const motion = nextMotion(ball, last, kit);
  const start = motion === 'rolling' ? gripped(ball, kit) : ball;
  if (motion === 'resting')
    return { ball: start, motion, stretch: null, leftS: Number.POSITIVE_INFINITY };
  const stretch = nextStretch(start, motion, kit);
  return { ball: start, motion, stretch, leftS: stretch.durationS };
}

/** Into the next stretch, at the end of one. */
export function onward({ ball, motion }: Runner, kit: Kit): Runner {
  const now = motion === 'flying' ? landed(ball, kit, FINE) : spunOut(ball);
  return begun(now, motion, kit);
}

/** Somewhat later, within its stretch. */
export function advanced(runner: Runner, byS: number): Runner {
  const { stretch, leftS, ball } = runner;
  if (stretch === null || byS === 0) return runner;
  const { end } = FINE.run({ ...stretch, start: ball, durationS: byS }, null);
  // The step that was to end the stretch has ended it, whatever the last bit says.
  return { ...runner, ball: end, leftS: byS >= leftS ? 0 : leftS - byS };
}

/** The ball as it is now, for a blow. */
export function bodyNow({ ball }: Runner): Body {
  return settled(toBody(ball));
}

/** A ball lower than this, m, is on the bed: it has just been thrown up, and is there by rounding. */
const ROUNDING_M = 1e-12;

function settled({ at: [x, y, z], ...motion }: Body): Body {
  return { ...motion, at: [x, y, z < ROUNDING_M ? 0 : z] };
}
