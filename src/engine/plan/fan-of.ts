import { type HeldShot, inputsOf } from '../goal/held-shot';
import { playOn, type TableScene } from '../goal/table-scene';
import { type RoomWindow, roomWindows } from '../room/windows';
import type { FanPlay } from './ranked-way';
import { heldOf } from './refine-way';
import type { Option, OptionQuestion } from './solve-option';

/**
 * A way as it plays out on the whole table when the cue points true, at either edge of what still
 * goes, and as far again beyond: there it misses. All else is as meant. Where the true stroke
 * itself does not go, one standard deviation of the player's direction stands in for the window.
 */
export function fanOf(
  question: OptionQuestion,
  scene: TableScene,
  option: Option,
): readonly FanPlay[] {
  const { thinRad, fullRad } = edgesOf(question, heldOf(question, option), option);
  const { aimRad } = option;
  const aims: readonly (readonly [FanPlay['hit'], number])[] = [
    ['true', aimRad],
    ['thin', thinRad],
    ['full', fullRad],
    ['missed-thin', 2 * thinRad - aimRad],
    ['missed-full', 2 * fullRad - aimRad],
  ];
  return aims.flatMap(([hit, aim]) => {
    const play = playOn(scene, inputsOf(option.shot, aim));
    return play === null ? [] : [{ hit, aimRad: aim, play }];
  });
}

/** A ball cut to the right is hit on its left: pointing further left is thin. Uncut, left is. */
function edgesOf({ profile }: OptionQuestion, held: HeldShot, { shot, aimRad }: Option) {
  const window: RoomWindow | undefined = roomWindows(held, inputsOf(shot, aimRad))?.aimRad;
  const low = window?.low.value ?? aimRad - profile.directionRad;
  const high = window?.high.value ?? aimRad + profile.directionRad;
  return shot.cutRad < 0 ? { thinRad: high, fullRad: low } : { thinRad: low, fullRad: high };
}
