import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { frictionlessBalls } from '../../harness/idealised-kits';
import type { Body } from '../reference/body';
import { directionDeg, rolling, speedOf, stunned } from './figure-cases';
import { type FigureTable, halfDigit, type PublishedFigure } from './published-figure';
import type { Subject } from './subject';

const RAD = Math.PI / 180;
const R = DEFAULT_KIT.ballRadiusM;

function rollsOffAt(subject: Subject, cutDeg: number, kit: Kit, speedMps = 2): number {
  const { cue } = subject.hit(rolling(speedMps), cutDeg * RAD, kit);
  return -directionDeg(subject.untilRoll(cue, kit).body);
}

function rollsOff(restitution: number, cutDeg: number, expected: number, decimals = 2) {
  return {
    name: `e ${restitution}, cut ${cutDeg}°`,
    expected,
    tolerance: halfDigit(decimals),
    of: (subject) => rollsOffAt(subject, cutDeg, frictionlessBalls(restitution)),
  } satisfies PublishedFigure;
}

/** The most that a stunned cue ball is turned, over all cuts. */
function mostTurned(ballRestitution: number, expected: number): PublishedFigure {
  return {
    name: `e ${ballRestitution}`,
    expected,
    tolerance: halfDigit(2),
    of: (subject) => {
      let most = 0;
      for (let cutDeg = 0.02; cutDeg < 90; cutDeg += 0.02) {
        const kit = frictionlessBalls(ballRestitution);
        const { cue } = subject.hit(stunned(1), cutDeg * RAD, kit);
        most = Math.max(most, Math.abs(directionDeg(cue)));
      }
      return most;
    },
  };
}

/** How far friction turns the object ball back off the line of centres, degrees. */
const thrownBack = (subject: Subject, ball: Body, cutDeg: number, kit: Kit): number =>
  cutDeg - directionDeg(subject.hit(ball, cutDeg * RAD, kit).object);

function stunThrow(speedMps: number, angles: readonly number[]): PublishedFigure[] {
  return [10, 15, 20, 30, 45, 60].map((cutDeg, index) => ({
    name: `${speedMps} m/s, cut ${cutDeg}°`,
    expected: angles[index] ?? Number.NaN,
    tolerance: halfDigit(2),
    of: (subject) => thrownBack(subject, stunned(speedMps), cutDeg, DEFAULT_KIT),
  }));
}

function mostThrow(friction: number, expected: number): PublishedFigure {
  const kit = { ...DEFAULT_KIT, ballFriction: { a: friction, b: 0, c: 0 } };
  return {
    name: `μ ${friction}`,
    expected,
    tolerance: halfDigit(2),
    of: (subject) => thrownBack(subject, stunned(1), 60, kit),
  };
}

/** Cutting to the right, outside is left: side of 0.4 sin φ, none of it lost, gears. */
function gearing(cutDeg: number): PublishedFigure {
  const side = 0.4 * Math.sin(cutDeg * RAD);
  const geared: Body = { ...stunned(2), spin: [0, 0, (-2.5 * side * 2) / R] };
  return {
    name: `cut ${cutDeg}°, outside ${side.toFixed(3)} R`,
    expected: 0,
    tolerance: 1e-9,
    of: (subject) => thrownBack(subject, geared, cutDeg, DEFAULT_KIT),
  };
}

const PARTING: PublishedFigure = {
  name: 'stunned, cut 37°, angle between the balls, °',
  expected: 90,
  tolerance: 1e-9,
  of: (subject) => {
    const { cue, object } = subject.hit(stunned(2), 37 * RAD, frictionlessBalls(1));
    return directionDeg(object) - directionDeg(cue);
  },
};

/** Share of its speed with which either ball rolls after a square hit by a rolling one. */
function follow(ball: 'cue' | 'object', expected: number): PublishedFigure {
  const kit = frictionlessBalls(1);
  return {
    name: `square, rolling: ${ball} ball’s share of the speed`,
    expected,
    tolerance: 1e-9,
    of: (subject) => {
      const after = subject.hit(rolling(2), 0, kit)[ball];
      return speedOf(subject.untilRoll(after, kit).body) / 2;
    },
  };
}

/**
 * A ratio told in whole numbers, of runs taken by eye: right to one at best. That still refuses balls
 * of a restitution below 0.92 (under 5 at 3 m/s) or above 0.97 (over 7 at 0.5 m/s).
 */
function runsAfter(speedMps: number): PublishedFigure {
  return {
    name: `default kit, ${speedMps} m/s`,
    expected: 6,
    tolerance: 1,
    of: (subject) => {
      const { cue, object } = subject.hit(rolling(speedMps), 0, DEFAULT_KIT);
      const runM = (ball: Body) => subject.untilRest(ball, DEFAULT_KIT).body.at[1] - ball.at[1];
      return runM(object) / runM(cue);
    },
  };
}

const CUTS = [10, 20, 30, 40, 48.59, 60, 80];

/** What two balls do to each other. */
export const CONTACT_FIGURES: readonly FigureTable[] = [
  {
    law: 'where a rolling cue ball goes, frictionless balls',
    source: 'tan = ((1+e)/2) sin φ cos φ / (sin²φ + ((1−e)/2) cos²φ + 2/5)',
    tag: 'worked out',
    unit: '°',
    figures: [
      ...[21.68, 31.87, 33.67, 31.2, 27.27, 20.63, 7.12].map((angle, index) =>
        rollsOff(1, CUTS[index] ?? 0, angle),
      ),
      rollsOff(1, 28.126, 33.749, 3),
      ...[20.15, 30.17, 32.26, 30.11, 26.42, 20.06, 6.94].map((angle, index) =>
        rollsOff(0.95, CUTS[index] ?? 0, angle),
      ),
    ],
  },
  {
    law: 'half-ball angle of real balls',
    source: 'measured, Broadfoot, Billiards (1896)',
    tag: 'read',
    unit: '°',
    // Gentle strength, says the source; how gentle it does not.
    figures: [0.5, 1, 2].map((speedMps) => ({
      name: `cut 30°, default kit, ${speedMps} m/s`,
      expected: 33,
      tolerance: 2,
      of: (subject: Subject) => rollsOffAt(subject, 30, DEFAULT_KIT, speedMps),
    })),
  },
  {
    law: 'object ball’s run over the cue ball’s, after a full hit by a rolling ball',
    source: 'common practice, no source: about 6',
    tag: 'common practice',
    unit: '×',
    figures: [0.5, 1, 2, 3].map(runsAfter),
  },
  {
    law: 'energy and momentum, e = 1',
    source: 'rigid-body mechanics',
    tag: 'worked out',
    unit: '',
    figures: [PARTING, follow('cue', 2 / 7), follow('object', 5 / 7)],
  },
  {
    law: 'most that a stunned cue ball is turned, frictionless balls',
    source: 'asin((1+e)/(3−e)), an exam paper',
    tag: 'read',
    unit: '°',
    figures: [mostTurned(0.95, 72.03), mostTurned(0.92, 67.38), mostTurned(0.98, 78.58)],
  },
  {
    law: 'throw of a stunned cue ball, e 0.95',
    source: 'min(μ, (2/7) u_t/((1+e) u_n)), with μ(u) fitted to Marlow 1995',
    tag: 'from memory',
    unit: '°',
    figures: [
      ...stunThrow(0.5, [1.48, 2.25, 3.05, 4.84, 4.77, 4.42]),
      ...stunThrow(1, [1.48, 2.25, 3.05, 4.15, 3.43, 2.98]),
      ...stunThrow(3, [1.48, 2.25, 2.59, 1.78, 1.19, 0.94]),
    ],
  },
  {
    law: 'most throw at a constant friction',
    source: 'atan μ',
    tag: 'worked out',
    unit: '°',
    figures: [mostThrow(0.03, 1.72), mostThrow(0.06, 3.43), mostThrow(0.1, 5.71)],
  },
  {
    law: 'no throw where outside gears',
    source: 'R ω_z = v sin φ',
    tag: 'worked out',
    unit: '°',
    figures: [gearing(15), gearing(30), gearing(45), gearing(60)],
  },
];
