import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { frictionlessBalls } from '../../harness/idealised-kits';
import { type FigureTable, halfDigit, type PublishedFigure } from './published-figure';

/** How many times a small error of the aim comes back in the object ball, on the other side. */
function amplification(
  name: string,
  distanceM: number,
  cutDeg: number,
  expected: number,
  tolerance: number,
): PublishedFigure {
  const shot = {
    distanceM,
    cutRad: (cutDeg * Math.PI) / 180,
    side: 0,
    height: 0,
    elevationRad: 0,
    speedMps: 2,
  };
  const error = 1e-5;
  return {
    name,
    expected,
    tolerance,
    of: (subject) => {
      const at = (aimRad: number) => subject.objectDirectionRad(shot, frictionlessBalls(1), aimRad);
      return (at(-error) - at(error)) / (2 * error);
    },
  };
}

/** The geometry of aiming. */
export const AIM_FIGURES: readonly FigureTable[] = [
  {
    law: 'amplification of a small aim error',
    source: 'd/(2R cos φ), for small errors',
    tag: 'worked out',
    unit: '×',
    figures: [
      amplification(
        'straight in, 1 m between centres',
        1 - 2 * DEFAULT_KIT.ballRadiusM,
        0,
        16.5,
        halfDigit(1),
      ),
      amplification('1 m, cut 60°', 1, 60, 35, halfDigit(0)),
    ],
  },
];
