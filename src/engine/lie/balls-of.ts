import type { Point } from '../table/point';
import type { BallName, NamedBall, Position } from './position';

export function ballNamed(position: Position, name: BallName): NamedBall | null {
  return position.find((ball) => ball.name === name) ?? null;
}

export function placeOf({ xM, yM }: NamedBall): Point {
  return { x: xM, y: yM };
}

/** All balls but those named. */
export function without(position: Position, ...names: readonly BallName[]): Position {
  return position.filter(({ name }) => !names.includes(name));
}
