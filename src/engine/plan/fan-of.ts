import { playOn, type Scene } from '../goal/scene';
import { atUsualPace } from '../room/drawn-stroke';
import { roomWindows } from '../room/windows';
import type { Stroke } from '../stroke/stroke';
import type { FanPlay } from './ranked-way';
import { type Option, type OptionQuestion, taskOf } from './solve-option';

/**
 * A way as it plays out on the whole table when the cue points true, at either edge of what still
 * goes, and as far again beyond: there it misses. The pace is the player's usual one, all else as
 * meant. Where the true stroke itself does not go, one standard deviation of the player's direction
 * stands in for the window.
 */
export function fanOf(question: OptionQuestion, scene: Scene, option: Option): readonly FanPlay[] {
  const stroke = atUsualPace(option.stroke, question.profile);
  const { thinRad, fullRad } = edgesOf(question, stroke);
  return fanAims(stroke.aimRad, thinRad, fullRad).flatMap(([hit, aim]) => {
    const play = playOn(scene, { ...stroke, aimRad: aim });
    return play === null ? [] : [{ hit, aimRad: aim, play }];
  });
}

/** Where the cue points: true, at either edge of what still goes, and as far again beyond. */
export function fanAims(
  aimRad: number,
  thinRad: number,
  fullRad: number,
): readonly (readonly [FanPlay['hit'], number])[] {
  return [
    ['true', aimRad],
    ['thin', thinRad],
    ['full', fullRad],
    ['missed-thin', 2 * thinRad - aimRad],
    ['missed-full', 2 * fullRad - aimRad],
  ];
}

/** A ball cut to the right is hit on its left: pointing further left is thin. Uncut, left is. */
function edgesOf(question: OptionQuestion, stroke: Stroke) {
  const { kit, profile } = question;
  const task = taskOf(question);
  const window = roomWindows(task, kit, stroke)?.aimRad;
  const low = window?.low.value ?? stroke.aimRad - profile.directionRad;
  const high = window?.high.value ?? stroke.aimRad + profile.directionRad;
  return task.thinSide < 0 ? { thinRad: high, fullRad: low } : { thinRad: low, fullRad: high };
}
