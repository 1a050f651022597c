import type { BallState } from '../../../src/engine/ball/ball-state';
import { play } from '../../../src/engine/direct/contact';
import { layoutOf } from '../../../src/engine/direct/layout';
import { type Shot, strokeOf } from '../../../src/engine/direct/shot';
import type { Kit } from '../../../src/engine/kit/kit';
import { travel } from '../../../src/engine/motion/journey';
import { stateAt } from '../../../src/engine/motion/phase';
import { randomQuery } from '../../harness/random-shots';
import { between, type Random, seededRandom } from '../../harness/seeded-random';
import type { Body } from '../reference/body';
import { plus, times, type Vec3 } from '../reference/vec3';
import { bodyOf, ENGINE_SUBJECT, stateOf } from '../report/engine-subject';
import type { RigidPlay } from './rigid-table';

const RAD = Math.PI / 180;

/** What rigid bodies are to play, and what the engine says comes of it. */
export interface RigidGame extends RigidPlay {
  readonly told: readonly Body[];
}

/** How long balls are followed once they roll, or once they have met, s. */
const ROLLING_S = 0.1;
const MET_S = 0.3;

export const RIGID_FAMILIES = {
  slides: { name: 'a ball struck level, high or low, until it rolls', stepS: 1 / 4000 },
  swerves: { name: 'a ball struck by a cue raised 10 to 40°, until it rolls', stepS: 1 / 4000 },
  impacts: { name: 'two balls with any spin, without a bed', stepS: 1 / 16_000 },
  smooth: { name: 'a stroke and a hit, on the bed, no friction between balls', stepS: 1 / 8000 },
  hits: { name: 'a stroke and a hit, on the bed, with friction between balls', stepS: 1 / 8000 },
} as const;

export type RigidFamilyName = keyof typeof RIGID_FAMILIES;

const DRAWS: Readonly<Record<RigidFamilyName, (random: Random) => RigidGame | null>> = {
  slides: (random) => {
    const { shot, kit } = rigidQuery(random);
    const height = between(random, -0.45, 0.45);
    const speedMps = between(random, 1, 4);
    return untilItRolls({ ...shot, side: 0, height, elevationRad: 0, speedMps }, kit);
  },
  swerves: (random) => {
    const { shot, kit } = rigidQuery(random);
    const elevationRad = between(random, 10, 40) * RAD;
    return untilItRolls({ ...shot, elevationRad, speedMps: between(random, 1, 3) }, kit);
  },
  impacts: (random) => {
    const { kit } = rigidQuery(random);
    const speedMps = between(random, 1, 3);
    const spin = () => (between(random, -1, 1) * speedMps) / kit.ballRadiusM;
    const velocity: Vec3 = [0, speedMps, 0];
    const cueBall: Body = { at: [0, 0, 0], velocity, spin: [spin(), spin(), spin()] };
    return withoutBed(cueBall, between(random, -60, 60) * RAD, between(random, 2, 6) / 1000, kit);
  },
  smooth: (random) => {
    const { kit, ...hit } = hitQuery(random);
    return afterHit(hit, { ...kit, ballFriction: { a: 0, b: 0, c: 0 } });
  },
  hits: (random) => {
    const { kit, ...hit } = hitQuery(random);
    return afterHit(hit, kit);
  },
};

/** The first so many games of a family, the same for ever. */
export function rigidGames(family: RigidFamilyName, count: number): RigidGame[] {
  const games: RigidGame[] = [];
  for (let seed = 1; games.length < count; seed++) {
    const game = DRAWS[family](seededRandom(seed));
    if (game !== null) games.push(game);
  }
  return games;
}

/** A shot, and a kit of no more than rigid bodies have: a dead bed, one friction between balls. */
function rigidQuery(random: Random): { readonly shot: Shot; readonly kit: Kit } {
  const { shot, kit } = randomQuery(random);
  const ballFriction = { a: between(random, 0.02, 0.1), b: 0, c: 0 };
  const none = { bedRestitution: 0, rollFriction: 1e-9, spinDecayRadS2: 1e-9 };
  return { shot, kit: { ...kit, ...none, ballFriction } };
}

interface Hit {
  readonly shot: Shot;
  readonly aimRad: number;
}

/** From near, with a level cue, more or less at the ghost ball. */
function hitQuery(random: Random): Hit & { readonly kit: Kit } {
  const { shot, kit } = rigidQuery(random);
  const cutRad = between(random, -60, 60) * RAD;
  const distanceM = between(random, 0.1, 0.4);
  const speedMps = between(random, 1, 3);
  const aimRad = between(random, -0.01, 0.01);
  return { kit, aimRad, shot: { ...shot, distanceM, cutRad, elevationRad: 0, speedMps } };
}

function untilItRolls(shot: Shot, kit: Kit): RigidGame {
  const ball = ENGINE_SUBJECT.strike(shot, kit);
  const untilS = wholeMs(ENGINE_SUBJECT.untilRoll(ball, kit).timeS + ROLLING_S);
  return { balls: [ball], kit, hasBed: true, untilS, told: [ballAt(ball, untilS, kit)] };
}

/** Null where the stroke misses. */
function afterHit({ shot, aimRad }: Hit, kit: Kit): RigidGame | null {
  const layout = layoutOf(shot, kit.ballRadiusM);
  const { leaving, contact } = play(strokeOf(shot, aimRad), layout, kit);
  if (contact === null) return null;
  const untilS = wholeMs(contact.timeS + MET_S);
  const told = [contact.after.cueBall, contact.after.objectBall].map((ball) =>
    ballAt(bodyOf(ball), untilS - contact.timeS, kit),
  );
  const balls = [bodyOf(leaving), resting([layout.objectXM, layout.objectYM, 0])];
  return { balls, kit, hasBed: true, untilS, told };
}

/** @param cueBall as it meets the other */
function withoutBed(cueBall: Body, bearingRad: number, meetS: number, kit: Kit): RigidGame {
  const widthM = 2 * kit.ballRadiusM;
  const away: Vec3 = [widthM * Math.sin(bearingRad), widthM * Math.cos(bearingRad), 0];
  const { cue, object } = ENGINE_SUBJECT.hit(cueBall, bearingRad, kit);
  const untilS = 2 * wholeMs(meetS);
  const goneOn = ({ at, velocity, spin }: Body, byS: number): Body => {
    return { at: plus(at, times(byS, velocity)), velocity, spin };
  };
  return {
    balls: [goneOn(cueBall, -meetS), resting(away)],
    kit,
    hasBed: false,
    untilS,
    told: [goneOn(cue, untilS - meetS), goneOn({ ...object, at: away }, untilS - meetS)],
  };
}

const wholeMs = (timeS: number): number => Math.ceil(1000 * timeS) / 1000;

const resting = (at: Vec3): Body => ({ at, velocity: [0, 0, 0], spin: [0, 0, 0] });

function ballAt(ball: Body, timeS: number, kit: Kit): Body {
  const { phases } = travel(stateOf(ball), 0, kit, []);
  const phase = phases.filter(({ startS }) => startS <= timeS).at(-1);
  if (phase === undefined) return ball;
  const state: BallState = stateAt(phase, Math.min(phase.durationS, timeS - phase.startS));
  return bodyOf(state);
}
