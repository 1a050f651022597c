import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { touchingM } from '../../src/engine/lie/clearances';
import type { NamedBall, Position } from '../../src/engine/lie/position';
import { INVENTED_PROFILES } from '../../src/engine/room/stroke-profile';
import { directBeside, directWays } from '../../src/engine/ways/direct-ways';
import { askedFor } from '../../src/engine/ways/ways-question';
import { Ease } from '../../src/engine/worth/ease';
import { worthOf } from '../../src/engine/worth/worth';
import { NINE_FOOT } from '../harness/invented-positions';
import { waysQuestion } from '../harness/ways-positions';

const DEG = Math.PI / 180;
const DRAWS = 256;
const at = (name: NamedBall['name'], xM: number, yM: number): NamedBall => ({ name, xM, yM });
const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

/** A cue ball from which the one is cut into the far right pocket by so much, to the right +. */
function cutFrom(ball: NamedBall, cutDeg: number, distanceM: number): NamedBall {
  const alongRad = Math.atan2(0.594 - ball.xM, 1.229 - ball.yM);
  const headingRad = alongRad - cutDeg * DEG;
  const widthM = 2 * DEFAULT_KIT.ballRadiusM;
  return at(
    'cue',
    ball.xM - widthM * Math.sin(alongRad) - distanceM * Math.sin(headingRad),
    ball.yM - widthM * Math.cos(alongRad) - distanceM * Math.cos(headingRad),
  );
}

/** The one into the far right pocket, played so; and others. */
function played(position: Position, stroke: { side: number; height: number; speedMps: number }) {
  const question = waysQuestion(position, { legal: 'lowest', kinds: ['direct'] });
  const [way] = directWays(question, 1, 'far-right').ways;
  const beside = way && directBeside(askedFor(question), way, stroke);
  if (!beside) throw new RangeError('the ball does not go');
  return worthOf(question, beside, DRAWS);
}

// All of these: common practice, no source.
describe('what players know of leaves', () => {
  it('a thin ball down the rail to a far pocket is better missed thin', () => {
    const misses = [at(1, 0.4, 0.2), at(1, 0.5, 0.2), at(1, 0.45, 0.5)].flatMap((ball) =>
      [-45, -55].flatMap((cutDeg) => {
        const position = [cutFrom(ball, cutDeg, 0.6), ball];
        return played(position, { side: 0, height: 0, speedMps: 2.1 }).miss ?? [];
      }),
    );
    expect(misses).toHaveLength(6);
    const [thin, full] = [
      misses.map((miss) => miss.thin?.theirBest ?? 1),
      misses.map((miss) => miss.full?.theirBest ?? 0),
    ];
    expect(mean(thin)).toBeLessThan(mean(full) - 0.08);
  });

  it('a long shot frozen to a rail is worth more to leave than a short one in the open', () => {
    const ease = new Ease({
      shape: NINE_FOOT,
      kit: DEFAULT_KIT,
      profile: INVENTED_PROFILES.club,
    });
    const railY = touchingM(DEFAULT_KIT) - NINE_FOOT.lengthM / 2;
    for (const ball of [at(1, 0.2, 0.6), at(1, 0, 0.5), at(1, -0.3, 0.7), at(1, 0.1, 0.9)]) {
      const worth = (cueBall: NamedBall) => 1 - (ease.easiest([cueBall, ball], [1])?.chance ?? 0);
      const frozen = worth(at('cue', 0.1, railY));
      expect(frozen).toBeGreaterThan(worth(at('cue', ball.xM - 0.15, ball.yM - 0.35)) + 0.3);
      expect(frozen).toBeGreaterThan(worth(at('cue', 0.1, railY + 0.25)) + 0.05);
    }
  });

  it('side over a long thin cut costs more than it gains where the plain roll leaves as good', () => {
    const ball = at(1, -0.1, 0.5);
    for (const distanceM of [0.9, 1.2]) {
      const position = [cutFrom(ball, 55, distanceM), ball, at(2, 0.3, -0.9)];
      const plain = played(position, { side: 0, height: 0.3, speedMps: 1.8 });
      for (const side of [0.3, -0.3]) {
        const spun = played(position, { side, height: 0.3, speedMps: 1.8 });
        expect(plain.after?.chance ?? 0).toBeGreaterThan((spun.after?.chance ?? 1) - 0.1);
        expect(plain.worth).toBeGreaterThan(spun.worth + 0.02);
      }
    }
  });
});
