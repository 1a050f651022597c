import { describe, expect, it } from 'vitest';
import { strokeOf } from '../../../src/engine/direct/shot';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../src/engine/kit/kit-spread';
import { roomForError } from '../../../src/engine/room/room-for-error';
import { INVENTED_PROFILES } from '../../../src/engine/room/stroke-profile';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../../src/store/default-desk';
import { createEnginePool } from '../../../src/worker/engine-pool';
import {
  createRoomClient,
  type PlayerRoom,
  type PlayerRoomQuestion,
} from '../../../src/worker/room-client';
import { answer, workshop } from './fake-worker';

const SOLVED = solveAim(DEFAULT_SHOT, DEFAULT_KIT);
if (!SOLVED.ok) throw new Error(SOLVED.reason);

const JOB: PlayerRoomQuestion = {
  balls: DEFAULT_SHOT,
  target: { kind: 'mouth', ...DEFAULT_POCKET },
  kit: DEFAULT_KIT,
  stroke: strokeOf(DEFAULT_SHOT, SOLVED.aimRad),
  profile: INVENTED_PROFILES.club,
  spread: UNMEASURED,
  some: null,
};
/** Not what the page itself would find. */
const TOLD = { ...roomForError(JOB), wants: 'firmer' as const };

function openClient(job = JOB) {
  const { hired, make } = workshop();
  const told: (PlayerRoom | null)[] = [];
  const assess = createRoomClient(createEnginePool(make, 1));
  const callOff = assess(job, (room) => told.push(room));
  return { hired, told, callOff };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

describe('the client that works out the room for error', () => {
  it('has a worker do it, and tells what came back', async () => {
    const { hired, told } = openClient();
    answer(hired[0], (job) => {
      const { some: _some, ...asked } = JOB;
      expect(job).toEqual(asked);
      return TOLD;
    });
    await settled();
    expect(told).toEqual([{ ...TOLD, range: null }]);
  });

  it('has one tell how far the chance may be off of whom something is known', async () => {
    const some = [[0, 0, 0, 0, 0, 0]];
    const { hired, told } = openClient({ ...JOB, some });
    answer(hired[0], () => TOLD);
    await settled();
    const range = { low: 0.4, high: 0.6 };
    answer(hired[0], (job) => {
      const { balls: shot, target, kit, spread } = JOB;
      const { share } = TOLD.chance;
      expect(job).toEqual({ some, asked: { shot, target, kit, spread }, share });
      return range;
    });
    await settled();
    expect(told).toEqual([{ ...TOLD, range }]);
  });

  it('tells nothing once called off', async () => {
    const { hired, told, callOff } = openClient();
    callOff();
    answer(hired[0], () => TOLD);
    await settled();
    expect(told).toEqual([]);
  });

  it('tells that there is none where one worker after the other fails', async () => {
    const { hired, told } = openClient();
    for (let worker = 0; worker < 3; worker++) hired[worker]?.fail('error');
    await settled();
    expect(hired).toHaveLength(3);
    expect(told).toEqual([null]);
  });

  it('asks no other worker once called off, and tells of no failure', async () => {
    const { hired, told, callOff } = openClient();
    callOff();
    hired[0]?.fail('error');
    await settled();
    expect(hired).toHaveLength(1);
    expect(told).toEqual([]);
  });

  it('tells that there is none where there are no workers', () => {
    const told: (PlayerRoom | null)[] = [];
    createRoomClient(null)(JOB, (room) => told.push(room));
    expect(told).toEqual([null]);
  });
});
