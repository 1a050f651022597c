import { stateAt } from '../motion/phase';
import { arrivalSpin, isDragged, isMuchRaised, sideless, speedOf, type Way } from '../plan/way';
import type { Stroke } from '../stroke/stroke';
import type { TablePlay } from '../table/table-play';
import { strokeAt } from './scan';
import type { WaysAsked } from './ways-question';

/** How players would call a stroke that was played with all balls on the table. */
export function playedWayOf(asked: WaysAsked, stroke: Stroke, play: TablePlay): Way {
  const { kit } = asked.question;
  const hit = play.events.find((event) => event.kind === 'hits-ball' && event.ball === 0);
  const hitS = hit?.timeS ?? 0;
  // What the phase would have come to without the hit is not how the ball arrives.
  const before = play.balls[0]?.phases.filter(({ startS }) => startS < hitS).at(-1);
  const arrival =
    before === undefined
      ? 'stun'
      : arrivalSpin(stateAt(before, hitS - before.startS), kit.ballRadiusM);
  const { side, height, speedMps, elevationRad } = stroke;
  const least = strokeAt(asked, { side, height, speedMps }, stroke.aimRad).elevationRad;
  return {
    side: sideless(side) ? 'none' : side > 0 ? 'right' : 'left',
    arrival,
    isDrag: isDragged(height, arrival),
    speed: speedOf(speedMps),
    isRaised: isMuchRaised(elevationRad, least),
  };
}
