import { describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { kitMoved, UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { refineWay } from '../../../../src/engine/plan/refine-way';
import { wayOf } from '../../../../src/engine/plan/way';
import { likelihoodOf } from '../../../../src/engine/player/known-player';
import { learn } from '../../../../src/engine/player/learn';
import { playerOf } from '../../../../src/engine/player/player-of';
import {
  type KnownPlayer,
  type PlayedShot,
  playerReport,
} from '../../../../src/engine/player/player-report';
import {
  type AskedShot,
  onCue,
  type ShotLine,
  shotLine,
} from '../../../../src/engine/player/shot-line';
import { rangeOfChance } from '../../../../src/engine/player/some-players';
import { questionChances } from '../../../../src/engine/player/the-question';
import { knownChance } from '../../../../src/engine/player/what-is-known';
import { chanceOf } from '../../../../src/engine/room/chance';
import { roomForError } from '../../../../src/engine/room/room-for-error';
import { directionSlope } from '../../../../src/engine/room/windows';
import { type LinedShot, ordinaryShots } from '../../../harness/forecaster';
import { hiddenStroke, logged } from '../../../harness/hidden-stroke';
import { askPosition, someOptions } from '../../../harness/invented-positions';

/** A log as the app keeps it, with a kit that nobody has measured. */
function played(seed: number, count: number, massRatioSd = UNMEASURED.massRatio) {
  const player = hiddenStroke(seed);
  const spread = { ...UNMEASURED, massRatio: massRatioSd };
  return ordinaryShots(seed, count).map(({ asked, line }) => {
    const { told } = player.play(asked, line);
    return { ...asked, spread, aimRad: line.solvedRad, result: told, counts: true };
  });
}

function knownFrom(shots: readonly PlayedShot[], madeOf10: number | null): KnownPlayer {
  const job = { madeOf10, kit: DEFAULT_KIT, spread: UNMEASURED, shots };
  const { known } = playerReport(job);
  if (known === null) throw new Error('nothing is known');
  return known;
}

function lineOf(asked: AskedShot): ShotLine {
  const line = shotLine(asked);
  if (line === null) throw new Error('the shot has no line');
  return line;
}

const shots = played(31, 40);
const known = knownFrom(shots, 6);

describe('the chance that is told', () => {
  it('is one figure: at the door, on Shot and of a way', () => {
    const cut = askPosition(
      [
        { name: 'cue', xM: 0, yM: -0.3 },
        { name: 1, xM: 0.25, yM: 0.5 },
      ],
      directCut(1, 'far-right'),
    );
    const { profile, spread: chanceSpread } = known;
    const question = { ...cut.asked.question, profile, spread: chanceSpread };
    const [option] = someOptions(cut, 12);
    if (option === undefined) throw new Error('there is no way');
    const { distanceM, cutRad, target, kit } = question;
    const { stroke } = option;
    const way = wayOf(question, stroke, cut.asked.leastElevationRad);
    const ofWay = refineWay({ ...cut.asked, question }, { option, way }).chance;

    const reach = target.kind === 'mouth' ? { objectDistanceM: target.distanceM } : {};
    const balls = { distanceM, cutRad, ...reach };
    const asked = { balls, target, kit, stroke, profile, spread: UNMEASURED, chanceSpread };
    const onShot = roomForError(asked).chance.share;

    const asking = questionChances(DEFAULT_KIT, UNMEASURED);
    if (asking === null) throw new Error('the question has no answer');
    const { aimRad: _, ...struck } = stroke;
    const shot = { ...balls, ...struck };
    const evidence = shots.map((one) => logged(lineOf(one), one.result));
    const knowledge = learn({ made: { question: asking, of10: 6 }, shots: evidence });
    const line = lineOf({ shot, target, kit, spread: UNMEASURED });
    const atDoor = knownChance(knowledge, line, asking.line);

    expect(ofWay).toBeGreaterThan(0.05);
    expect(ofWay).toBeLessThan(0.95);
    expect(onShot).toBeCloseTo(ofWay, 9);
    expect(atDoor.value).toBeCloseTo(ofWay, 9);
    const asTold = { shot, target, kit, spread: UNMEASURED };
    const range = rangeOfChance({ some: known.some, asked: asTold, share: onShot });
    expect(atDoor.low).toBeCloseTo(range?.low ?? Number.NaN, 9);
    expect(atDoor.high).toBeCloseTo(range?.high ?? Number.NaN, 9);
  });

  it.each([
    ['sixty shots', knownFrom(played(32, 60), null), 0.015],
    ['ten shots', knownFrom(played(33, 10), null), 0.045],
    ['an answer alone', knownFrom([], 5), 0.025],
  ])('is the mean over all that may be the player, and within its width: %s', (_, who, most) => {
    const off = ordinaryShots(6, 60).map(({ asked }) => {
      const shot = { ...asked, spread: UNMEASURED };
      const line = lineOf(shot);
      const { task, kit, stroke } = line;
      const { share } = chanceOf(task, kit, stroke, who.profile, who.spread);
      const range = rangeOfChance({ some: who.some, asked: shot, share });
      expect(range?.low).toBeLessThanOrEqual(share);
      expect(range?.high).toBeGreaterThanOrEqual(share);
      const each = who.some.map((one) => likelihoodOf(playerOf(one), line, 'went'));
      return share - each.reduce((sum, one) => sum + one, 0) / each.length;
    });
    const mean = off.reduce((sum, one) => sum + one, 0) / off.length;
    const square = off.reduce((sum, one) => sum + one * one, 0) / off.length;
    expect(Math.abs(mean)).toBeLessThan(0.012);
    expect(Math.sqrt(square)).toBeLessThan(most);
  });

  it('lies within its width even of a shot that hardly one of them makes', () => {
    const some = [...Array.from({ length: 127 }, () => [8, 0, 0, 0, 0, 0]), [-3, 0, 0, 0, 0, 0]];
    const [hard] = [...ordinaryShots(6, 60)].sort((a, b) => roomOf(a) - roomOf(b));
    if (hard === undefined) throw new Error('there are no shots');
    const range = rangeOfChance({ some, asked: hard.asked, share: 0.05 });
    expect(range?.low).toBeLessThanOrEqual(0.05);
    expect(range?.high).toBeGreaterThanOrEqual(0.05);
  });
});

function roomOf({ line }: LinedShot): number {
  return line.edges[2] - line.edges[1];
}

describe('the squirt of the cue in play', () => {
  it('tells on the tip’s share of the line as on a kit with such a cue', () => {
    for (const { line } of ordinaryShots(8, 12)) {
      for (const sds of [-2, -0.5, 1.5]) {
        const kit = kitMoved(line.kit, line.spread, 'massRatio', sds);
        const per = (input: 'side' | 'aimRad') =>
          directionSlope(line.task, kit, line.stroke, input) ?? Number.NaN;
        const played = per('side') / per('aimRad') / (kit.ballRadiusM + kit.tipRadiusM);
        expect(Math.abs(onCue(line, sds).perTipM - played)).toBeLessThan(0.12);
      }
    }
  });

  it('is hardly moved by shots where it was measured well', () => {
    const times = (massRatioSd: number) =>
      Math.log(knownFrom(played(34, 60, massRatioSd), null).profile.steady?.massRatioTimes ?? 0);
    expect(Math.abs(times(UNMEASURED.massRatio))).toBeGreaterThan(0.1);
    // What was measured is three deviations off in one of 400 alone.
    expect(Math.abs(times(0.02))).toBeLessThan(0.06);
  });
});
