import { signal } from '@preact/signals';
import type { FitJob, FitReport } from '../../../../src/engine/fit/fit-report';
import type { TrialShot } from '../../../../src/engine/fit/trials/trials';
import { KIT_QUANTITIES } from '../../../../src/engine/kit/kit-spread';
import { INVENTED_PROFILES, type StrokeProfile } from '../../../../src/engine/room/stroke-profile';
import { createDeskModel } from '../../../../src/state/desk-model';
import { createKitInPlay } from '../../../../src/state/kit-in-play';
import { createKitModel } from '../../../../src/state/kit-model';
import { createKnownKit } from '../../../../src/state/measure/create-known-kit';
import { createMeasureModel } from '../../../../src/state/measure/create-measure-model';
import type { MeasureModel } from '../../../../src/state/measure/measure-model';
import { createNotedKnowledge } from '../../../../src/state/measure/noted-knowledge';
import type { Foresee } from '../../../../src/state/measure/work-report';
import { workReport } from '../../../../src/state/measure/work-report';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import type { StorePort } from '../../../../src/store/store-port';
import { createRests, noteIn } from '../at-rest';

export const LINE: TrialShot = {
  trial: 'line',
  stroke: {
    headingRad: 0,
    side: 0.45,
    height: 0,
    elevationRad: 0.05,
    speedMps: 2.5,
    speedWord: 'firm',
  },
  setup: { distanceM: 1.88, gapM: 0, cutRad: 0, bedLengthM: 2.54 },
};

export const CURVE: TrialShot = {
  ...LINE,
  trial: 'curve',
  stroke: { ...LINE.stroke, elevationRad: 0.2 },
};

/** How much surer an invented fit is after each reading. */
const SHARE_PER_SHOT = 0.5;

/** An invented fit: a mass ratio a tenth larger for each shot, and half of each spread. */
export function inventedReport({ shots, prior }: FitJob): FitReport {
  const share = SHARE_PER_SHOT ** shots.length;
  const spread = { ...prior.spread };
  const narrowed = KIT_QUANTITIES.map((name) => [name, spread[name] * share]);
  return {
    knowledge: {
      kit: { ...prior.kit, massRatio: prior.kit.massRatio * 1.1 ** shots.length },
      spread: { ...spread, ...Object.fromEntries(narrowed) },
      correlation: KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((_, j) => Number(i === j))),
    },
    estimates: [],
    shots: shots.map(({ id }) => ({ id, readings: [], goodShare: 1, isDoubtful: false })),
    advice: [],
    lessons: [],
    aimSdRad: null,
    toGo: null,
    converged: true,
    stretch: 1,
  };
}

export interface OpenMeasureOptions {
  /** Null: the browser cannot work beside the page. */
  readonly fit?: ((job: FitJob) => Promise<FitReport>) | null;
  /** In place of the store's own. */
  readonly store?: Partial<StorePort>;
  /** Another visit: what was kept is loaded again. */
  readonly kept?: StorePort;
  readonly foresee?: Foresee | null;
  /** What the last visit noted of what the readings tell. */
  readonly note?: { text: string | null };
  readonly build?: string;
}

/** Puts what the readings tell on a screen: it is worked out for whoever looks. */
export async function lookAt({ report }: Pick<MeasureModel, 'report'>): Promise<void> {
  report.subscribe(() => undefined);
  await Promise.resolve();
}

/** The measuring over a memory store, with rests and the time of day as the test decides. */
export async function openMeasure(options: OpenMeasureOptions = {}) {
  const { note = { text: null }, build = 'a build', foresee = null } = options;
  const memory = options.kept ?? createMemoryStore(createNoticeBoard());
  const store: StorePort = { ...memory, ...options.store };
  const loaded = await memory.loadAll();
  const desk = createDeskModel({ store, desk: loaded.desk });
  const clock = { ms: 1_790_000_000_000 };
  const now = () => {
    clock.ms += 1000;
    return clock.ms;
  };
  let ids = loaded.attempts.length;
  const newId = () => {
    ids += 1;
    return `new-${ids}`;
  };
  const kit = createKitModel(createKitInPlay({ store, desk, shelves: loaded }), {
    desk,
    now,
    newId,
  });
  const profile = signal<StrokeProfile>(INVENTED_PROFILES.club);
  const jobs: FitJob[] = [];
  const { later, rest } = createRests();
  const { fit: workOut = async (job: FitJob) => inventedReport(job) } = options;
  const fit =
    workOut &&
    ((job: FitJob) => {
      jobs.push(job);
      return workOut(job);
    });
  const known = createKnownKit({
    store,
    attempts: loaded.attempts,
    kit,
    desk,
    profile,
    fit,
    workReport,
    noted: createNotedKnowledge(noteIn(note), build),
    later,
  });
  const measure = createMeasureModel(known, { desk, fit, foresee, now, newId });
  /** A line shot from its beginning to its reading. */
  const shootLine = (landingM = 0.08) => {
    const id = measure.begin(LINE);
    measure.finishStep(id);
    measure.finishStep(id);
    measure.enter(id, landingM);
    return id;
  };
  const lastJob = () => {
    const job = jobs.at(-1);
    if (!job) throw new Error('nothing was worked out yet');
    return job;
  };
  return { measure, kit, desk, profile, memory, jobs, lastJob, rest, shootLine };
}
