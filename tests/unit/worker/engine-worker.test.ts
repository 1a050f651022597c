import { describe, expect, it } from 'vitest';
import type { FitJob } from '../../../src/engine/fit/fit-report';
import { directCut } from '../../../src/engine/goal/goal';
import { shotFrom } from '../../../src/engine/goal/shot-from-position';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { kitAlong } from '../../../src/engine/kit/kit-along';
import { UNMEASURED } from '../../../src/engine/kit/kit-spread';
import { gridFrom } from '../../../src/engine/plan/grid-from';
import type { RankQuestion } from '../../../src/engine/plan/refine-way';
import { INVENTED_PROFILES } from '../../../src/engine/room/stroke-profile';
import { WPA_POCKETS } from '../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../src/engine/table/table-shape';
import { isRefusal } from '../../../src/headless/door-refusal';
import { parseFitJob } from '../../../src/headless/fit-job';
import { answerJobs } from '../../../src/worker/answer-jobs';
import type { Asked, Told } from '../../../src/worker/engine-messages';
import { ENGINE_WORK } from '../../../src/worker/engine-work';
import { jobOf, work } from './invented-jobs';

/** A worker's line to the page, and what went over it. */
function lineTo(works: Parameters<typeof answerJobs>[1], now?: () => number) {
  const told: Told[] = [];
  let hear = (_asked: Asked) => {};
  answerJobs(
    {
      addEventListener: (_type, listener) => {
        hear = (data) => listener(new MessageEvent('message', { data }));
      },
      postMessage: (message) => void told.push(structuredClone(message)),
    },
    works,
    now,
  );
  return { told, ask: (asked: Asked) => hear(asked) };
}

/** Invented readings: as many firm lines, left and right in turn. */
function fitJob(count: number): FitJob {
  const readings = Array.from({ length: count }, (_, index) => {
    const side = index % 2 === 0 ? 0.45 : -0.45;
    return { trial: 'line', side, read: { landingM: -side / 9 } };
  });
  const asked = parseFitJob({ tableLengthM: 2.54, next: true, readings });
  if (isRefusal(asked)) throw new Error(asked.message);
  return asked.job;
}

describe('the worker', () => {
  it('says that it is still at a long job, but not at every step', () => {
    let nowMs = 0;
    const long = (job: { steps: number; stepMs: number }, sayAtIt: () => void) => {
      for (let step = 0; step < job.steps; step++) {
        nowMs += job.stepMs;
        sayAtIt();
      }
    };
    const { told, ask } = lineTo({ long }, () => nowMs);
    ask({ id: 1, name: 'long', job: { steps: 1000, stepMs: 1 } });
    expect(told).toEqual([{ id: 1, ok: true, result: undefined }]);
    ask({ id: 2, name: 'long', job: { steps: 100_000, stepMs: 1 } });
    const said = told.slice(1, -1);
    expect(said).toHaveLength(50);
    expect(said).toEqual(said.map(() => ({ id: 2, isAtIt: true })));
    expect(told.at(-1)).toMatchObject({ id: 2, ok: true });
  });

  it('is at a fit in steps short enough to be told from a dead one', () => {
    let steps = 0;
    // Each look at the clock is a step: of a second each, so that all others are told.
    const { told, ask } = lineTo(ENGINE_WORK, () => 1000 * steps++);
    ask({ id: 1, name: 'fit', job: fitJob(20) });
    expect(told.at(-1)).toMatchObject({ id: 1, ok: true });
    expect(told.length).toBeGreaterThan(20 * 10);
  });

  it('answers each job by its id, and tells of one that fails or is unknown', () => {
    const { told, ask } = lineTo({ fit: work });
    ask({ id: 1, name: 'fit', job: jobOf(0.1) });
    ask({ id: 2, name: 'fit', job: jobOf(2) });
    ask({ id: 3, name: 'knit', job: jobOf(0.1) });
    expect(told).toMatchObject([
      { id: 1, ok: true, result: { stretch: 0.1 } },
      { id: 2, ok: false, message: 'More than all of the speed.' },
      { id: 3, ok: false, message: 'There is no such work.' },
    ]);
  });
});

/** A ball a little off the straight line to a corner; invented. */
function asked(): RankQuestion {
  const shape = tableShape(2.54, 1.27, WPA_POCKETS);
  const position = [
    { name: 'cue', xM: 0, yM: 0 },
    { name: 3, xM: 0.3, yM: 0.7 },
  ] as const;
  const goal = directCut(3, 'far-right');
  const shot = shotFrom(position, goal, shape, DEFAULT_KIT);
  if (!shot.ok) throw new Error(shot.reason);
  const { distanceM, cutRad, target, headingRad, least } = shot;
  const profile = INVENTED_PROFILES.club;
  return {
    question: {
      distanceM,
      cutRad,
      target,
      kit: kitAlong(DEFAULT_KIT, 0),
      spread: UNMEASURED,
      profile,
    },
    scene: { position, goal, headingRad, shape, kit: DEFAULT_KIT, zone: null },
    leastElevationRad: least.elevationRad,
  };
}

describe('what the worker does', () => {
  it('compares ways from the sweep to the fan, all of it fit to be sent to the page', () => {
    const question = asked();
    const { told, ask } = lineTo(ENGINE_WORK);
    let id = 0;
    const told1 = <T>(name: string, job: unknown): T => {
      id += 1;
      ask({ id, name, job });
      const last = told.at(-1);
      if (last === undefined || !('ok' in last) || !last.ok) throw new Error(`no ${name}`);
      return last.result as T;
    };
    const { position, headingRad, shape } = question.scene;
    const grid = gridFrom(position, headingRad, shape, DEFAULT_KIT);
    const stretch = { from: 0, to: 340 };
    type Options = ReturnType<typeof ENGINE_WORK.sweep>;
    const options = told1<Options>('sweep', { asked: question, grid, stretch });
    const picked = told1<Options>('pick', { asked: question, options });
    expect(picked.length).toBeGreaterThan(1);
    const [option] = picked;
    type Way = ReturnType<typeof ENGINE_WORK.refine>;
    const way = told1<Way>('refine', { asked: question, option });
    expect(way.option).toEqual(option);
    type Fan = ReturnType<typeof ENGINE_WORK.fan>;
    const fan = told1<Fan>('fan', { asked: question, option });
    expect(fan.map(({ hit }) => hit)).toContain('true');
    const pocketed = fan.find(({ hit }) => hit === 'true')?.play.balls[1]?.outcome;
    expect(pocketed).toMatchObject({ kind: 'pocketed', pocket: 'far-right' });
  });
});
