import type { Body } from '../reference/body';
import { length, minus } from '../reference/vec3';
import { RIGID_FAMILIES, type RigidFamilyName, type RigidGame, rigidGames } from './rigid-games';
import { playRigid } from './rigid-table';

const DEG = 180 / Math.PI;

/** How far engine and rigid bodies are apart, for each game, the worse of two balls. */
export interface RigidAgreement {
  readonly placesMm: readonly number[];
  /** Velocities, % of the fastest ball's at the start. */
  readonly velocitiesPercent: readonly number[];
  /** Direction of the ball that was hit, or of the only one. */
  readonly directionsDeg: readonly number[];
}

const GAMES = 40;

/** @param coarser how many times longer than the family's own a step is */
export function rigidAgreement(name: RigidFamilyName, coarser = 1): RigidAgreement {
  const stepS = coarser * RIGID_FAMILIES[name].stepS;
  const apart = rigidGames(name, GAMES).map((game) => apartOf(game, playRigid(game, stepS)));
  return {
    placesMm: apart.map(({ placeMm }) => placeMm),
    velocitiesPercent: apart.map(({ velocityPercent }) => velocityPercent),
    directionsDeg: apart.map(({ directionDeg }) => directionDeg),
  };
}

function apartOf({ balls, told }: RigidGame, played: readonly Body[]) {
  const pairs = told.flatMap((ball, number) => {
    const other = played[number];
    return other === undefined ? [] : [{ ball, other }];
  });
  const worst = (of: (ball: Body) => Body['at']) =>
    Math.max(...pairs.map(({ ball, other }) => length(minus(of(ball), of(other)))));
  const fastest = Math.max(...balls.map(({ velocity }) => length(velocity)));
  const last = pairs.at(-1);
  return {
    placeMm: 1000 * worst(({ at }) => at),
    velocityPercent: (100 * worst(({ velocity }) => velocity)) / fastest,
    directionDeg: last === undefined ? Number.NaN : turned(last.ball, last.other),
  };
}

function turned({ velocity: [ax, ay] }: Body, { velocity: [bx, by] }: Body): number {
  return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) * DEG;
}
