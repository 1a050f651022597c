import { signal } from '@preact/signals';
import type { AimAnswer, AimResult, Shot } from '../../../src/engine/direct/shot';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { createDeskModel } from '../../../src/state/desk-model';
import { createShotModel } from '../../../src/state/shot-model';
import type { ShotPorts } from '../../../src/state/shot-ports';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { createMemoryStore } from '../../../src/store/memory-store';
import { createNoticeBoard } from '../../../src/store/notice-board';
import type { LaidShot, Preferences } from '../../../src/store/records';
import { TABLE_RUNS } from '../../../src/units/table-run';

/** An answer that is easy to foretell: a tenth of a radian for a whole radius of side. */
export function answerTo(shot: Shot): AimAnswer {
  const aimRad = shot.side / 10;
  return {
    ok: true,
    aimRad,
    aimOffsetM: aimRad * shot.distanceM,
    stickOffsetM: aimRad * shot.distanceM + shot.side * 0.038,
    aimOnObjectBallM: aimRad * shot.distanceM - 0.02,
    stickOnObjectBallM: aimRad * shot.distanceM + shot.side * 0.038 - 0.02,
    parts: { squirtRad: aimRad, swerveRad: 0, throwRad: 0 },
    pivotBridgeM: 0.25,
    arrival: {
      speedMps: shot.speedMps * 0.8,
      directionRad: 0,
      cutRad: shot.cutRad,
      sideSpinRadS: 0,
      motion: 'rolling',
      heightM: 0,
      timeS: 1,
    },
    objectBall: { speedMps: shot.speedMps * 0.6, directionRad: shot.cutRad },
    cueBall: { speedMps: 0.3, directionRad: -1, rollingDirectionRad: -0.8 },
    otherAimsRad: [],
  };
}

/** Answers every shot but those slower than a tenth of a metre a second. */
export function fakeSolve(shot: Shot): AimResult {
  if (shot.speedMps >= 0.1) return answerTo(shot);
  return { ok: false, reason: 'stops-short' };
}

/** The place Shot over a desk in memory, on answers that are invented. */
export function openShot(
  shot: Partial<LaidShot> = {},
  preferences: Partial<Preferences> = {},
  ports: Partial<ShotPorts> = {},
) {
  const desk = createDeskModel({
    store: createMemoryStore(createNoticeBoard()),
    desk: {
      ...DEFAULT_DESK,
      shot: { ...DEFAULT_DESK.shot, ...shot },
      preferences: { ...DEFAULT_DESK.preferences, ...preferences },
    },
  });
  const kit = signal(DEFAULT_KIT);
  const model = createShotModel({
    solve: fakeSolve,
    play: fakeSolve,
    nearestSpeed: (_task, _kit, { speedMps }) => (speedMps < 0.1 ? 0.1 : null),
    goes: (_task, _kit, { speedMps }) => speedMps >= 0.1,
    trace: (asked) => [
      { xM: 0, yM: 0 },
      { xM: 0, yM: asked.distanceM },
    ],
    nextFrame: (work) => work(),
    // Each change in a frame of its own.
    frameTime: () => Symbol('frame'),
    kit,
    isKitSettled: signal(true),
    kitAlong: () => kit.value,
    tableLengthM: signal(2.54),
    tableRuns: signal(TABLE_RUNS),
    desk,
    ...ports,
  });
  return { model, desk, kit };
}
