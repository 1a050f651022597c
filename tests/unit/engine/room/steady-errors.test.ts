import { describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { fanOf } from '../../../../src/engine/plan/fan-of';
import { linearChance } from '../../../../src/engine/plan/linear-chance';
import { refineWay } from '../../../../src/engine/plan/refine-way';
import { wayOf } from '../../../../src/engine/plan/way';
import { chanceOf } from '../../../../src/engine/room/chance';
import {
  INVENTED_PROFILES,
  type SteadyErrors,
  type StrokeProfile,
} from '../../../../src/engine/room/stroke-profile';
import { askPosition, someOptions } from '../../../harness/invented-positions';
import { seededRandom } from '../../../harness/seeded-random';
import { randomSolvedShot } from '../../../harness/solved-shots';

const NONE: SteadyErrors = { aimRad: 0, fullRad: 0, speedShare: 0 };
const CLUB = INVENTED_PROFILES.club;
const withErrors = (steady: Partial<SteadyErrors>): StrokeProfile => ({
  ...CLUB,
  steady: { ...NONE, ...steady },
});
const cut = askPosition(
  [
    { name: 'cue', xM: 0, yM: -0.3 },
    { name: 1, xM: 0.25, yM: 0.5 },
  ],
  directCut(1, 'far-right'),
);
const [option] = [...someOptions(cut, 12)].sort((a, b) => b.chance.share - a.chance.share);
if (option === undefined) throw new Error('there is no way');
const asked = (profile: StrokeProfile) => ({
  ...cut.asked,
  question: { ...cut.asked.question, profile },
});
const way = wayOf(cut.asked.question, option.stroke, cut.asked.leastElevationRad);
const refined = (profile: StrokeProfile) => refineWay(asked(profile), { option, way });
const usual = refined(CLUB);

describe('a player who is off shot after shot', () => {
  it('by nothing is as one of whom nothing is said, to the last bit', () => {
    const random = seededRandom(71);
    for (let count = 0; count < 8; count++) {
      const { task, kit, stroke } = randomSolvedShot(random);
      for (const chance of [chanceOf, linearChance]) {
        const of = (profile: StrokeProfile) => chance(task, kit, stroke, profile, UNMEASURED);
        expect(of(withErrors({ massRatioTimes: 1 }))).toEqual(of(CLUB));
      }
    }
    expect(refined(withErrors({}))).toEqual(usual);
    const fan = (profile: StrokeProfile) => {
      const { question, scene } = asked(profile);
      return fanOf(question, scene, option);
    };
    expect(fan(withErrors({}))).toEqual(fan(CLUB));
  });

  it('makes fewer by a quick count of straight lines too', () => {
    const random = seededRandom(72);
    const apart: number[] = [];
    while (apart.length < 24) {
      const { task, kit, stroke } = randomSolvedShot(random);
      const player = withErrors({ aimRad: 0.002, fullRad: -0.002, speedShare: 0.05 });
      const quick = linearChance(task, kit, stroke, player, UNMEASURED)?.share;
      if (quick === undefined) continue;
      apart.push(Math.abs(quick - chanceOf(task, kit, stroke, player, UNMEASURED).share));
    }
    // The two are this near without any steady error.
    expect(apart.sort((a, b) => a - b)[12]).toBeLessThan(0.03);
  });

  it('hits fuller on a cut either way, or further right on both', () => {
    const made = (cutRad: number, steady: Partial<SteadyErrors>) => {
      const random = seededRandom(73);
      for (;;) {
        const { task, kit, stroke } = randomSolvedShot(random);
        if (task.thinSide !== Math.sign(cutRad)) continue;
        const turned = (aimRad: number) => ({ ...stroke, aimRad: stroke.aimRad + aimRad });
        const of = (meant: typeof stroke, profile: StrokeProfile) =>
          chanceOf(task, kit, meant, profile, UNMEASURED).share;
        return {
          steady: of(stroke, withErrors(steady)),
          turned: (by: number) => of(turned(by), CLUB),
        };
      }
    };
    for (const side of [1, -1]) {
      const full = made(side, { fullRad: 0.003 });
      expect(full.steady).toBe(full.turned(side * 0.003));
      const right = made(side, { aimRad: 0.003 });
      expect(right.steady).toBe(right.turned(0.003));
    }
  });

  it('counts what is not known of the errors as scatter', () => {
    const unsure = { aimRad: 0.002, fullRad: 0.002, correlation: 0 };
    expect(refined(withErrors({ unsure })).chance).toBeLessThan(usual.chance - 0.02);
    // On one side of a cut they cancel.
    const cancelling = {
      ...unsure,
      correlation: -cut.asked.question.cutRad / Math.abs(cut.asked.question.cutRad),
    };
    expect(refined(withErrors({ unsure: cancelling })).chance).toBeCloseTo(usual.chance, 9);
  });

  it('has the cue ball run on at a harder pace, in the fan too', () => {
    const harder = withErrors({ speedShare: 0.2 });
    const ran = (profile: StrokeProfile) => {
      const { question, scene } = asked(profile);
      const [first] = fanOf(question, scene, option);
      return first?.play.balls[0]?.phases[0]?.start;
    };
    const [soft, hard] = [ran(CLUB), ran(harder)].map((start) =>
      Math.hypot(start?.vx ?? 0, start?.vy ?? 0),
    );
    expect((hard ?? 0) / (soft ?? 1)).toBeCloseTo(1.2, 6);
    expect(refined(harder).rest).not.toEqual(usual.rest);
  });
});
