import { playOn, type Scene } from '../goal/scene';
import type { KitCorrelation } from '../kit/kit-spread';
import { chanceOf } from '../room/chance';
import { atUsualPace } from '../room/drawn-stroke';
import { roomWindows } from '../room/windows';
import type { NamedOption } from './distinct-ways';
import { drawnPlays, goingPlays } from './drawn-plays';
import { STRAY_SOURCES, type StraySource } from './linear-chance';
import type { RankedWay } from './ranked-way';
import { cueBallFate } from './rest-spread';
import { type Option, type OptionQuestion, taskOf } from './solve-option';

/** What ways are to be compared for, and where. */
export interface RankQuestion {
  readonly question: OptionQuestion;
  readonly scene: Scene;
  /** Left out: the quantities of the kit are independent. */
  readonly correlation?: KitCorrelation;
  /** The most level cue that the position allows, rad. */
  readonly leastElevationRad: number;
}

/**
 * A way worked out in full. Its chance counts what is not known of the kit; where the cue ball comes
 * to rest counts the player's stroke alone, on the kit as it is thought to be.
 */
export function refineWay(asked: RankQuestion, { option, way }: NamedOption): RankedWay {
  const { question, scene, correlation } = asked;
  const { kit, profile, spread } = question;
  const { stroke } = option;
  const task = taskOf(question);
  const { share, error } = chanceOf(task, kit, stroke, profile, spread, correlation);
  const plays = drawnPlays(scene, task, stroke, profile);
  const going = goingPlays(scene, task, kit, stroke, profile);
  return {
    option,
    way,
    chance: share,
    chanceError: error,
    hardest: hardestOf(option),
    windows: roomWindows(task, kit, stroke),
    ...cueBallFate(
      scene,
      plays,
      going,
      playOn(scene, atUsualPace(stroke, profile), { endsOnly: true }),
    ),
  };
}

function hardestOf({ chance }: Option): StraySource {
  return STRAY_SOURCES.reduce((a, b) => (chance.sds[b] > chance.sds[a] ? b : a));
}
