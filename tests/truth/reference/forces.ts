import type { Kit } from '../../../src/engine/kit/kit';
import { type Body, GRAVITY } from './body';

/** x, y, z, then velocity, then spin. */
export type Coordinates = [
  x: number,
  y: number,
  z: number,
  vx: number,
  vy: number,
  vz: number,
  wx: number,
  wy: number,
  wz: number,
];

/** Rates of change of a ball's coordinates. */
export type ForceLaw = (timeS: number, ball: Coordinates) => Coordinates;

export function toCoordinates({ at, velocity, spin }: Body): Coordinates {
  return [...at, ...velocity, ...spin];
}

export function toBody([x, y, z, vx, vy, vz, wx, wy, wz]: Coordinates): Body {
  return { at: [x, y, z], velocity: [vx, vy, vz], spin: [wx, wy, wz] };
}

/** Velocity with which the lowest point slips over the cloth. */
export function slipOf([, , , vx, vy, , wx, wy]: Coordinates, radiusM: number) {
  return [vx - radiusM * wy, vy + radiusM * wx] as const;
}

/** Gravity alone; on a tilted bed part of it points along the bed. */
export function inFlight(kit: Kit): ForceLaw {
  const { rightM_per_M, alongM_per_M } = kit.bedSlope;
  return (_, [, , , vx, vy, vz]) => [
    vx,
    vy,
    vz,
    GRAVITY * rightM_per_M,
    GRAVITY * alongM_per_M,
    -GRAVITY,
    0,
    0,
    0,
  ];
}

/** Full friction against the slip, at the lowest point, with its torque; side dying at its own rate. */
export function whileSliding(kit: Kit): ForceLaw {
  const R = kit.ballRadiusM;
  const { rightM_per_M, alongM_per_M } = kit.bedSlope;
  return (_, ball) => {
    const [, , , vx, vy, , , , wz] = ball;
    const [ux, uy] = slipOf(ball, R);
    const pull = (kit.slideFriction * GRAVITY) / Math.hypot(ux, uy);
    const [fx, fy] = [-pull * ux, -pull * uy];
    return [
      vx,
      vy,
      0,
      fx + GRAVITY * rightM_per_M,
      fy + GRAVITY * alongM_per_M,
      0,
      (2.5 / R) * fy,
      (-2.5 / R) * fx,
      -kit.spinDecayRadS2 * Math.sign(wz),
    ];
  };
}

/** Resistance against the motion, five sevenths of the slope, spin bound to velocity by no slip. */
export function whileRolling(kit: Kit): ForceLaw {
  const R = kit.ballRadiusM;
  const { rightM_per_M, alongM_per_M } = kit.bedSlope;
  return (_, [, , , vx, vy, , , , wz]) => {
    const drag = (kit.rollFriction * GRAVITY) / Math.hypot(vx, vy);
    const ax = -drag * vx + (5 / 7) * GRAVITY * rightM_per_M;
    const ay = -drag * vy + (5 / 7) * GRAVITY * alongM_per_M;
    return [vx, vy, 0, ax, ay, 0, -ay / R, ax / R, -kit.spinDecayRadS2 * Math.sign(wz)];
  };
}
