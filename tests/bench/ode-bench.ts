import { play } from '../../src/engine/direct/contact';
import { layoutOf } from '../../src/engine/direct/layout';
import { strokeOf } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { type Query, randomQuery } from '../harness/random-shots';
import { seededRandom } from '../harness/seeded-random';
import { findAim } from '../truth/reference/find-aim';
import { playShot } from '../truth/reference/play-shot';
import type { BenchLine } from './bench-line';
import { equalEffort, type Solved } from './equal-effort';
import { pathCosts } from './path-costs';
import { ratePerSecond } from './stopwatch';

const SHOTS = 40;
/** The engine's calls are short, and the compiler has to see enough of them. */
const ENGINE_ROUNDS = 100;

/** Shots that both can solve, the engine's aim first among its own. */
function solvedShots(elevationShare: number, slopeM_per_M: number): readonly Solved[] {
  const random = seededRandom(7);
  const solved: Solved[] = [];
  while (solved.length < SHOTS) {
    const { shot, kit } = randomQuery(random, slopeM_per_M);
    const query: Query = {
      kit,
      shot: { ...shot, elevationRad: shot.elevationRad * elevationShare },
    };
    const result = solveAim(query.shot, query.kit);
    if (result.ok) solved.push({ ...query, aimsRad: [result.aimRad, ...result.otherAimsRad] });
  }
  return solved;
}

const each =
  (shots: readonly Solved[], work: (shot: Solved) => void) =>
  (call: number): void => {
    const shot = shots[call % shots.length];
    if (shot !== undefined) work(shot);
  };

function compare(name: string, elevationShare: number, slopeM_per_M: number): BenchLine[] {
  const shots = solvedShots(elevationShare, slopeM_per_M);
  const effort = equalEffort(shots);
  const engineSolves = ratePerSecond(
    SHOTS * ENGINE_ROUNDS,
    each(shots, ({ shot, kit }) => solveAim(shot, kit)),
  );
  const odeSolves = ratePerSecond(
    SHOTS,
    each(shots, ({ shot, kit }) => findAim(shot, kit, effort, effort.missTolerance)),
  );
  const enginePaths = ratePerSecond(
    SHOTS * ENGINE_ROUNDS,
    each(shots, ({ shot, kit, aimsRad: [aimRad = 0] }) =>
      play(strokeOf(shot, aimRad), layoutOf(shot, kit.ballRadiusM), kit),
    ),
  );
  const odePaths = ratePerSecond(
    SHOTS,
    each(shots, ({ shot, kit, aimsRad: [aimRad = 0] }) => playShot(shot, kit, aimRad, effort)),
  );
  return [
    { name: `${name}: solver tolerance for equal error`, value: effort.tolerance, unit: '' },
    { name: `${name}: aim solves by the solver`, value: odeSolves, unit: '/s' },
    { name: `${name}: aim solves, engine over solver`, value: engineSolves / odeSolves, unit: '×' },
    { name: `${name}: paths, engine over solver`, value: enginePaths / odePaths, unit: '×' },
  ];
}

/**
 * The engine beside a solver of differential equations of the same run, both at the same error; and
 * what a path costs the engine.
 */
export function odeBench(): readonly BenchLine[] {
  return [
    ...compare('ODE, cue level', 0, 0),
    ...compare('ODE, cue raised 0-5°', 5 / 30, 0),
    ...compare('ODE, cue raised 0-30°', 1, 0),
    ...compare('ODE, 0-5°, tilted bed', 5 / 30, 0.002),
    ...pathCosts(),
  ];
}
