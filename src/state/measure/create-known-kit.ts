import { computed, effect, type ReadonlySignal, untracked } from '@preact/signals';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { StrokeProfile } from '../../engine/room/stroke-profile';
import type { Attempt } from '../../store/attempt';
import type { ShelfName } from '../../store/records';
import type { StorePort } from '../../store/store-port';
import { type Audience, createAudience } from '../audience';
import type { DeskModel } from '../desk-model';
import { createKeptRows, type KeptRows } from '../kept-rows';
import type { KitInPlay } from '../kit-in-play';
import { steady } from '../steady';
import type { AttemptProgress } from './attempt-progress';
import { attemptsOfKit, lastReadAt } from './attempts-of-kit';
import type { WorkOut } from './find-priors';
import { kitInPlay, shelvesNow } from './kit-in-play';
import { type KnownOfKit, knownOfKit, toldBy } from './known-of-kit';
import { isUnread, type MeasureQuestion, presentQuestion } from './measure-question';
import type { NotedKnowledge } from './noted-knowledge';
import { indexShelves, type Played, type ShelfIndex } from './parts-played';
import { createReportAtRest, type ReportAtRest, type WorkReport } from './report-at-rest';
import { servedAims } from './served-aims';
import { measuredShelves } from './sureness';
import type { ServedAims } from './work-report';

export interface KnownKitPorts {
  readonly store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>;
  /** As loaded. */
  readonly attempts: readonly Attempt[];
  readonly kit: Pick<KitInPlay, 'shelves' | 'inPlay'>;
  readonly desk: Pick<DeskModel, 'shot' | 'recentShots' | 'pocket'>;
  /** How the strokes of whoever plays scatter, roughly. */
  readonly profile: ReadonlySignal<StrokeProfile>;
  /** Works out what readings tell; null where the browser cannot. */
  readonly fit: WorkOut | null;
  readonly workReport: WorkReport;
  /** What they last told. */
  readonly noted: NotedKnowledge;
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
}

/** What is known of the kit in play. */
export interface KnownKit {
  /** Those that touch a part of the kit in play, the newest first. */
  readonly attempts: ReadonlySignal<readonly AttemptProgress[]>;
  /** What is known of the kit in play before anything was read on it. */
  readonly before: ReadonlySignal<KitKnowledge>;
  /** What is known of it now; the same as before where nothing was read. */
  readonly knowledge: ReadonlySignal<KitKnowledge>;
  /** Whether nothing more of what the readings tell is on its way: {@link knowledge} stands. */
  readonly isSettled: ReadonlySignal<boolean>;
  /** The shelves of whose record in play anything was measured. */
  readonly measured: ReadonlySignal<readonly ShelfName[]>;
  /** When a reading of the kit in play was last taken; null: never. */
  readonly lastReadAtMs: ReadonlySignal<number | null>;
  flush(): Promise<void>;
  /** Stops watching. */
  dispose(): void;
}

/** What the measuring works with beside it. */
export interface KnownKitParts {
  readonly kept: KeptRows<Attempt>;
  readonly inPlay: ReadonlySignal<Played>;
  readonly question: ReadonlySignal<MeasureQuestion>;
  readonly reported: ReportAtRest;
  /** Whether that is worked out of the present question. */
  readonly isFresh: ReadonlySignal<boolean>;
  readonly known: ReadonlySignal<KnownOfKit>;
  /** What readings are taken for, as it is now. */
  served(): ServedAims;
  readonly index: ReadonlySignal<ShelfIndex>;
  /** Whoever looks at the report: without anybody it is not worked out for its own sake. */
  readonly audience: Audience;
}

/** Keeps the attempts, and what they tell of the kit in play: all that an aim hangs on. */
export function createKnownKit(ports: KnownKitPorts): KnownKit & { readonly parts: KnownKitParts } {
  const { store, kit, desk, fit, workReport, noted, later } = ports;
  const kept = createKeptRows({ store, list: 'attempts' }, ports.attempts);
  const shelves = shelvesNow(kit);
  const inPlay = kitInPlay(kit);
  const question = presentQuestion({ inPlay, shelves, attempts: kept.all, profile: ports.profile });
  const served = () => servedAims(desk, inPlay.peek().records.balls.ballRadiusM);
  const recalled = noted.recall(question.peek());
  const audience = createAudience();
  const isTold = (told: MeasureQuestion | null) =>
    told === question.value || (isUnread(question.value) && (told === null || isUnread(told)));
  const reported = createReportAtRest({
    question,
    workOut: fit,
    workReport,
    later,
    served: () => untracked(served),
    // What was noted of these very readings spares a start the work, and so does having none.
    isWanted: (worked) => audience.isThere.value || !isTold(worked ?? recalled?.question ?? null),
  });
  const told = computed(() => {
    const worked = reported.worked.value;
    return worked ? toldBy(worked) : recalled;
  });
  const known = computed(() => knownOfKit(inPlay.value, told.value));
  const isFresh = computed(() => reported.worked.value?.question === question.value);
  const stopNoting = effect(() => {
    if (isUnread(question.value)) noted.forget();
    else if (told.value !== null && told.value !== recalled) noted.keep(told.value);
  });
  const index = computed(() => indexShelves(shelves.value));
  const attempts = computed(() => attemptsOfKit(kept.all.value, inPlay.value, index.value));

  return {
    attempts,
    before: steady(computed(() => known.value.before)),
    knowledge: steady(computed(() => known.value.now)),
    isSettled: computed(() => isTold(told.value?.question ?? null) || reported.isDone.value),
    measured: computed(() => measuredShelves(known.value.before, known.value.now)),
    lastReadAtMs: computed(() => lastReadAt(attempts.value)),
    flush: kept.flush,
    dispose() {
      stopNoting();
      reported.dispose();
    },
    parts: { kept, inPlay, question, reported, isFresh, known, served, index, audience },
  };
}
