import { beforeAll, describe, expect, it } from 'vitest';
import type { Position } from '../../src/engine/lie/position';
import { DEG_PER_RAD } from '../../src/engine/numerics/angle';
import type { ToldWay } from '../../src/engine/ways/refine-found';
import { answerPlay } from '../../src/headless/play-answer';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { type Random, seededRandom } from '../harness/seeded-random';
import { type ToldEvent, whatLedTo } from '../harness/told-events';
import { waysOf } from '../harness/ways-found';
import { randomPosition, waysQuestion } from '../harness/ways-positions';

const POSITIONS = campaignSize(3, 300);
const MOST = campaignSize(8, 12);

interface Searched {
  readonly ways: readonly ToldWay[];
  /** Those that, played as they are told, do something else. */
  readonly odd: readonly ToldWay[];
}

/** The events of a way's stroke, as the door plays it. */
function played(position: Position, { headingRad, option }: ToldWay): readonly ToldEvent[] {
  const { aimRad, side, height, elevationRad, speedMps } = option.stroke;
  const request = {
    table: { lengthM: 2.54, widthM: 1.27 },
    balls: position,
    stroke: {
      headingDeg: (headingRad + aimRad) * DEG_PER_RAD,
      side,
      height,
      elevationDeg: elevationRad * DEG_PER_RAD,
      speedMps,
    },
  };
  const answer = JSON.parse(answerPlay(JSON.stringify(request), 1));
  if (!answer.ok) throw new RangeError(answer.message);
  return answer.events;
}

function doesAsTold(position: Position, way: ToldWay): boolean {
  const events = played(position, way);
  const { ball, pocket, via } = way.goal;
  const fell = events.find((event) => event.kind === 'pocketed' && event.ball === ball);
  return (
    fell?.pocket === pocket &&
    JSON.stringify(named(whatLedTo(ball, events) ?? [])) === JSON.stringify(named(via))
  );
}

const named = (via: ToldWay['goal']['via']) =>
  via.map((step) => ('ball' in step ? [step.by, step.ball] : [step.by, step.cushion]));

/** Plays the ways of one position. */
function lookedAt(random: Random): Searched {
  const position = randomPosition(random, 3 + Math.floor(5 * random()));
  const { ways } = waysOf(waysQuestion(position), { most: MOST, keepsLow: false });
  const odd = ways.filter((way) => !doesAsTold(position, way));
  for (const { goal } of odd) tell(`did something else: ${JSON.stringify({ position, goal })}`);
  return { ways, odd };
}

describe(`ways in ${POSITIONS} random positions of 3 to 7 balls`, () => {
  let all: readonly Searched[] = [];
  beforeAll(() => {
    const random = seededRandom(1700);
    let told = 0;
    all = Array.from({ length: POSITIONS }, (_, at) => {
      const looked = lookedAt(random);
      told += looked.ways.length;
      if (at % 20 === 19) tell(`ways: ${told} told in ${at + 1} positions`);
      return looked;
    });
  }, CAMPAIGN_TIMEOUT_MS);

  it('do what they say, in that order, in all but one of 200', () => {
    const told = all.flatMap(({ ways }) => ways).length;
    const failed = all.flatMap(({ odd }) => odd.map(({ goal }) => goal));
    tell(`ways: ${told} told, ${failed.length} did something else`);
    expect(told).toBeGreaterThan((MOST * POSITIONS) / 2);
    expect(failed.slice(0, Math.max(0, failed.length - Math.floor(told / 200)))).toEqual([]);
  });

  it('are never two alike', () => {
    for (const { ways } of all) {
      const names = ways.map(({ goal, way, option: { stroke } }) =>
        JSON.stringify([goal, way, stroke.speedMps > 0]),
      );
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('are of every kind there is', () => {
    const kinds = new Set(all.flatMap(({ ways }) => ways.map(({ goal }) => goal.kind)));
    expect([...kinds].sort()).toEqual(['bank', 'carom', 'combination', 'direct', 'kick']);
  });
});
