import { layoutOf } from '../direct/layout';
import { type HeldShot, inputsOf } from '../goal/held-shot';
import { playOn, type TableScene } from '../goal/table-scene';
import type { KitCorrelation } from '../kit/kit-spread';
import { chanceOf } from '../room/chance';
import { roomWindows } from '../room/windows';
import type { NamedOption } from './distinct-ways';
import { drawnPlays, goingPlays } from './drawn-plays';
import { STRAY_SOURCES, type StraySource } from './linear-chance';
import type { RankedWay } from './ranked-way';
import { cueBallFate } from './rest-spread';
import type { Option, OptionQuestion } from './solve-option';

/** What ways are to be compared for, and where. */
export interface RankQuestion {
  /** With the kit as the shot sees it: its slope along the straight line. */
  readonly question: OptionQuestion;
  readonly scene: TableScene;
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
  const { profile, spread } = question;
  const held = heldOf(question, option);
  const inputs = inputsOf(option.shot, option.aimRad);
  const { share, error } = chanceOf(held, inputs, profile, spread, correlation);
  const plays = drawnPlays(scene, inputs, profile);
  const going = goingPlays(scene, held, inputs, profile);
  return {
    option,
    way,
    chance: share,
    chanceError: error,
    hardest: hardestOf(option),
    windows: roomWindows(held, inputs),
    ...cueBallFate(scene, plays, going, playOn(scene, inputs)),
  };
}

export function heldOf({ kit, target }: OptionQuestion, { shot }: Option): HeldShot {
  return { shot, kit, target, layout: layoutOf(shot, kit.ballRadiusM) };
}

function hardestOf({ chance }: Option): StraySource {
  return STRAY_SOURCES.reduce((a, b) => (chance.sds[b] > chance.sds[a] ? b : a));
}
