import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { GRAVITY } from '../reference/body';
import { level, rolling, speedOf, WORKED_GRAVITY, workedKit } from './figure-cases';
import { type FigureTable, halfDigit, type PublishedFigure } from './published-figure';
import type { Subject } from './subject';

/** A ball struck level at a height (in R), as it begins to roll. */
const rolled = (subject: Subject, height: number, speedMps: number, kit: Kit) =>
  subject.untilRoll(subject.strike(level(0, height, speedMps), kit), kit);

/** A square hit of the centre at μ_s 0.2: seconds and metres to rolling. */
function centreHit(speedMps: number, seconds: number, metres: number): PublishedFigure[] {
  const kit = workedKit({ slideFriction: 0.2 });
  const figure = (name: string, expected: number, of: PublishedFigure['of']) => ({
    name: `${speedMps} m/s, ${name}`,
    expected,
    tolerance: halfDigit(4),
    of,
  });
  return [
    figure('time, s', seconds, (subject) => {
      return rolled(subject, 0, speedMps, kit).timeS;
    }),
    figure('way, m', metres, (subject) => {
      return rolled(subject, 0, speedMps, kit).body.at[1];
    }),
    figure('share of speed left', 5 / 7, (subject) => {
      return speedOf(rolled(subject, 0, speedMps, kit).body) / speedMps;
    }),
  ];
}

/** What can be told of a ball struck level at a height (in R) at 2 m/s, as it begins to roll. */
function struckAt(
  height: number,
  what: string,
  expected: number,
  of: (rolling: ReturnType<typeof rolled>) => number,
): PublishedFigure {
  const kit = workedKit({ slideFriction: 0.25 });
  return {
    name: `struck ${height.toFixed(2)} R above the centre${what}`,
    expected,
    tolerance: 1e-9,
    of: (subject) => of(rolled(subject, height, 2, kit)),
  };
}

/** Share of its speed with which it rolls, at any speed. */
const rollShare = (height: number, expected: number) =>
  struckAt(height, ', share of speed left', expected, ({ body }) => speedOf(body) / 2);

const slideTime = (height: number, expected: number) =>
  struckAt(height, ' at 2 m/s, time to rolling, s', expected, ({ timeS }) => timeS);

/** Seconds that a ball takes to die over 2.483 m. */
function rollOut(rollFriction: number, expected: number): PublishedFigure {
  const speed = Math.sqrt(2 * rollFriction * WORKED_GRAVITY * 2.483);
  return {
    name: `μ_r ${rollFriction}`,
    expected,
    tolerance: halfDigit(2),
    of: (subject) => subject.untilRest(rolling(speed), workedKit({ rollFriction })).timeS,
  };
}

const DRIFT: PublishedFigure = {
  name: '2 m roll to rest, μ_r 0.01, 0.1 mm/m across',
  expected: 7.14,
  tolerance: halfDigit(2),
  of: (subject) => {
    const bedSlope = { alongM_per_M: 0, rightM_per_M: 0.0001 };
    const speed = Math.sqrt(2 * DEFAULT_KIT.rollFriction * GRAVITY * 2);
    return 1000 * subject.untilRest(rolling(speed), { ...DEFAULT_KIT, bedSlope }).body.at[0];
  },
};

/** What the cloth does to a ball. */
export const SLIDE_AND_ROLL_FIGURES: readonly FigureTable[] = [
  {
    law: 'slide to roll after a hit in the centre',
    source: 'Shepard 1995',
    tag: 'read',
    unit: '',
    figures: [
      ...centreHit(1, 0.1456, 0.1248),
      ...centreHit(2, 0.2912, 0.4993),
      ...centreHit(3, 0.4369, 1.1234),
      ...centreHit(5, 0.7281, 3.1205),
    ],
  },
  {
    law: 'slide to roll after a hit above or below the centre',
    source: 'Coriolis 1835; textbook problems',
    tag: 'read',
    unit: '',
    figures: [
      rollShare(0.8, 9 / 7),
      rollShare(0.4, 1),
      slideTime(0.4, 0),
      rollShare(-2 / 3, 5 / 21),
      slideTime(-2 / 3, (16 * 2) / (21 * 0.25 * WORKED_GRAVITY)),
    ],
  },
  {
    law: 'time of a roll to rest',
    source: 'uniform deceleration',
    tag: 'worked out',
    unit: 's',
    figures: [
      rollOut(0.005, 10.06),
      rollOut(0.01, 7.11),
      rollOut(0.015, 5.81),
      rollOut(0.02, 5.03),
    ],
  },
  {
    law: 'drift of a rolling ball on a tilted bed',
    source: '(5/7) s D / (2 μ_r), for small slopes',
    tag: 'worked out',
    unit: 'mm',
    figures: [DRIFT],
  },
];
