import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { NO_SQUIRT } from '../../harness/idealised-kits';
import { directionDeg, level } from './figure-cases';
import { type FigureTable, halfDigit, type PublishedFigure } from './published-figure';

const RAD = Math.PI / 180;

function squirt(massRatio: number, offset: number, expected: number, tolerance: number) {
  return {
    name: `m/m_e ${massRatio}, contact ${offset} R`,
    expected,
    tolerance,
    // Struck on the left, so that it leaves to the right.
    of: (subject) =>
      directionDeg(subject.strike(level(-offset, 0, 2), { ...DEFAULT_KIT, massRatio })),
  } satisfies PublishedFigure;
}

function masse(elevationDeg: number, side: number, height: number, expected: number, decimals = 3) {
  return [0.8, 2, 5].map((speedMps) => ({
    name: `cue at ${elevationDeg}°, side ${side}, height ${height}, ${speedMps} m/s`,
    expected,
    tolerance: halfDigit(decimals),
    of: (subject) => {
      const stroke = { side, height, elevationRad: elevationDeg * RAD, speedMps };
      return directionDeg(subject.untilRoll(subject.strike(stroke, NO_SQUIRT), NO_SQUIRT).body);
    },
  })) satisfies PublishedFigure[];
}

/** What the tip does, and what a raised cue makes of it. */
export const STRIKE_FIGURES: readonly FigureTable[] = [
  {
    law: 'squirt',
    source: 'no slip of the tip, sideways momentum kept (Shepard 2001; Cross 2008)',
    tag: 'worked out',
    unit: '°',
    figures: [
      ...[0.61, 1.2, 1.76, 2.27, 2.71].map((angle, index) =>
        squirt(20, (index + 1) / 10, angle, halfDigit(2)),
      ),
      ...[0.43, 0.84, 1.23, 1.59, 1.89].map((angle, index) =>
        squirt(30, (index + 1) / 10, angle, halfDigit(2)),
      ),
    ],
  },
  {
    law: 'squirt of an ordinary maple cue at half a radius',
    source: 'common practice, no source',
    tag: 'common practice',
    unit: '°',
    figures: [squirt(DEFAULT_KIT.massRatio, 0.5, 2.5, 0.3)],
  },
  {
    law: 'massé: where a ball struck by a raised cue rolls off',
    source: 'theorem of Coriolis 1835, re-derived',
    tag: 'from memory',
    unit: '°',
    figures: [
      ...masse(5, 0.5, 0, 2.5, 2),
      ...masse(10, 0.4, 0.2, 3.355),
      ...masse(5, 0.3, -0.3, 2.151),
      ...masse(45, 0.4, 0, 21.801),
      ...masse(60, 0.4, -0.2, 49.107),
    ],
  },
];
