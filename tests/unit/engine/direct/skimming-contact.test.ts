import { expect, it } from 'vitest';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';

const RAD = Math.PI / 180;

// Found by a scan of aims: a ball in flight that only skims the top of the object ball, within touch
// for a few millimetres of its path, still has an aim.
it.each([
  [
    -5.8153,
    {
      shot: {
        distanceM: 0.31414984219009057,
        cutRad: -0.3586170081464156,
        side: 0.38942665452403463,
        height: 0.08835347612078895,
        elevationRad: 0.4523871076626829,
        speedMps: 4.231059483881109,
      },
      kit: {
        massRatio: 23.362697007714882,
        slideFriction: 0.20368772071865232,
        rollFriction: 0.016905839083135338,
        spinDecayRadS2: 11.976198257618215,
        ballRestitution: 0.9550285106017228,
        bedRestitution: 0.5067520559454638,
        cueBallMassRatio: 0.9980885901958885,
      },
    },
  ],
  [
    -7.9022,
    {
      shot: {
        distanceM: 0.2853118213126436,
        cutRad: -1.0552712616826656,
        side: -0.10663582309654718,
        height: -0.0416919713842166,
        elevationRad: 0.4645619938279415,
        speedMps: 3.4380625702440737,
      },
      kit: {
        massRatio: 31.316401938938306,
        slideFriction: 0.19616853821843158,
        rollFriction: 0.011775733866769798,
        spinDecayRadS2: 9.991740848224605,
        ballRestitution: 0.9617739487416705,
        bedRestitution: 0.6188933194044329,
        cueBallMassRatio: 1.038854229922236,
      },
    },
  ],
])('finds the aim at %d° of a shot that skims over the object ball', (degrees, { shot, kit }) => {
  const result = solveAim(shot, { ...DEFAULT_KIT, ...kit });
  expect(result.ok && result.aimRad / RAD).toBeCloseTo(degrees, 3);
});
