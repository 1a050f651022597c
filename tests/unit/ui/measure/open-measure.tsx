import { computed, signal } from '@preact/signals';
import { render } from '@testing-library/preact';
import { type FitJob, fitReport } from '../../../../src/engine/fit/fit-report';
import { foresee } from '../../../../src/engine/fit/foresee';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';
import { createDeskModel } from '../../../../src/state/desk-model';
import { createInstallModel } from '../../../../src/state/install-model';
import { createKitInPlay } from '../../../../src/state/kit-in-play';
import { createKitModel } from '../../../../src/state/kit-model';
import { createAwakeModel } from '../../../../src/state/measure/awake-model';
import { createKnownKit } from '../../../../src/state/measure/create-known-kit';
import { createMeasureModel } from '../../../../src/state/measure/create-measure-model';
import { workReport } from '../../../../src/state/measure/work-report';
import type { Attempt } from '../../../../src/store/attempt';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import type { Desk } from '../../../../src/store/records';
import type { AppModels } from '../../../../src/ui/app-models';
import { KitPlace } from '../../../../src/ui/kit/KitPlace';
import { createRouter } from '../../../../src/ui/route';
import { fakeInstallPage } from '../../sensors/fake-install-page';
import { fakeWakePage } from '../../sensors/fake-wake-page';

const NOW_MS = 1_790_000_000_000;

/** The Kit place at an address, on models that work things out at once and keep all in memory. */
export function openMeasure(
  hash: string,
  attempts: readonly Attempt[] = [],
  deskRow: Partial<Desk> = {},
) {
  history.replaceState(null, '', hash);
  const store = createMemoryStore(createNoticeBoard());
  const desk = createDeskModel({ store, desk: { ...DEFAULT_DESK, ...deskRow } });
  const kit = createKitModel(createKitInPlay({ store, desk, shelves: DEMO_CATALOGUE }), { desk });
  const fit = async (job: FitJob) => fitReport(job);
  const known = createKnownKit({
    store,
    attempts,
    kit,
    desk,
    profile: signal(INVENTED_PROFILES.club),
    fit,
    workReport,
    noted: { recall: () => null, keep: () => {}, forget: () => {} },
    later: (work) => {
      const timer = setTimeout(work);
      return () => clearTimeout(timer);
    },
  });
  const measure = createMeasureModel(known, {
    desk,
    fit,
    foresee: async (job) => foresee(job),
    now: () => NOW_MS,
  });
  const { page, lastLock } = fakeWakePage();
  const router = createRouter(window);
  const install = createInstallModel({
    page: fakeInstallPage(),
    findStorage: () => null,
    hasMeasured: computed(() => measure.lastReadAtMs.value !== null),
    openedEmpty: attempts.length === 0,
  });
  const awake = createAwakeModel(page);
  const nowMs = () => NOW_MS;
  // The screens looked at here read no others.
  const app = { kit, desk, measure, awake, nowMs, router, install } as AppModels;
  // Any other place is not looked at here.
  const Shown = () => (router.route.value.place === 'kit' ? <KitPlace app={app} /> : null);
  const { container } = render(<Shown />);
  return { app, measure, lastLock, container };
}
