import { computed, effect, type ReadonlySignal } from '@preact/signals';
import type { StrokeProfile } from '../../engine/room/stroke-profile';
import type { Attempt } from '../../store/attempt';
import { freshId } from '../../store/fresh-id';
import type { StorePort } from '../../store/store-port';
import { createAudience } from '../audience';
import { crowded } from '../crowded';
import type { DeskModel } from '../desk-model';
import { createKeptRows } from '../kept-rows';
import type { KitModel } from '../kit-model';
import { steady } from '../steady';
import { createAttemptChanges } from './attempt-changes';
import { progressOf } from './attempt-progress';
import { attemptsOfKit, lastReadAt, newestUnfinished } from './attempts-of-kit';
import {
  buttHeightToRaise,
  createCueLengths,
  elevationFarOff,
  USUAL_CUE_LENGTH_M,
} from './butt-height';
import type { WorkOut } from './find-priors';
import { createForesight } from './foresight';
import { choiceOf, kitInPlay, shelvesNow } from './kit-in-play';
import { isOfKit, knownOfKit, toldBy } from './known-of-kit';
import type { MeasureModel } from './measure-model';
import { isUnread, type MeasureQuestion, presentQuestion } from './measure-question';
import type { NotedKnowledge } from './noted-knowledge';
import { indexShelves, playedAttempt, trialBedOf } from './parts-played';
import { createReportAtRest } from './report-at-rest';
import { measuredShelves } from './sureness';
import { trialOffers } from './trial-offers';
import type { Foresee } from './work-report';

export interface MeasurePorts {
  readonly store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>;
  /** As loaded. */
  readonly attempts: readonly Attempt[];
  readonly kit: Pick<KitModel, 'shelves' | 'current'>;
  readonly desk: Pick<DeskModel, 'shot' | 'recentShots'>;
  /** How the strokes of whoever plays scatter, roughly. */
  readonly profile: ReadonlySignal<StrokeProfile>;
  /** Works out what readings tell; null where the browser cannot. */
  readonly fit: WorkOut | null;
  /** Works out what was to be expected of one; null where the browser cannot. */
  readonly foresee: Foresee | null;
  /** What they last told. */
  readonly noted: NotedKnowledge;
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
  /** The time of day, ms since 1970. */
  readonly now?: () => number;
  readonly newId?: () => string;
}

/** Keeps the attempts, and works out what they tell of the kit in play. */
export function createMeasureModel(ports: MeasurePorts): MeasureModel {
  const { store, kit, desk, fit, foresee, noted, later, now = Date.now, newId = freshId } = ports;
  const kept = createKeptRows({ store, list: 'attempts' }, ports.attempts);
  const shelves = shelvesNow(kit);
  const inPlay = kitInPlay(kit);
  const question = presentQuestion({ inPlay, shelves, attempts: kept.all, profile: ports.profile });
  const aims = () => {
    const recent = desk.recentShots.peek();
    return recent.length > 0 ? recent : [desk.shot.peek()];
  };
  const recalled = noted.recall(question.peek());
  const audience = createAudience();
  const isTold = (told: MeasureQuestion | null) =>
    told === question.value || (isUnread(question.value) && (told === null || isUnread(told)));
  const reported = createReportAtRest({
    question,
    workOut: fit,
    later,
    aims,
    // What was noted of these very readings spares a start the work, and so does having none.
    isWanted: (worked) => audience.isThere.value || !isTold(worked ?? recalled?.question ?? null),
  });
  const told = computed(() => {
    const worked = reported.worked.value;
    return worked ? toldBy(worked) : recalled;
  });
  const known = computed(() => knownOfKit(inPlay.value, told.value));
  const isFresh = computed(() => reported.worked.value?.question === question.value);
  const foresight = createForesight({ question, isFresh, workOut: fit, foresee });
  const stopNoting = effect(() => {
    if (isUnread(question.value)) noted.forget();
    else if (told.value !== null && told.value !== recalled) noted.keep(told.value);
  });
  const index = computed(() => indexShelves(shelves.value));
  const attempts = computed(() => attemptsOfKit(kept.all.value, inPlay.value, index.value));
  const lengths = createCueLengths(() => kept.all.value);
  const sizesOf = (attempt: Attempt) => {
    const { cues, balls } = (playedAttempt(attempt, index.value) ?? inPlay.value).records;
    return { ballRadiusM: balls.ballRadiusM, tipRadiusM: cues.tipRadiusM };
  };

  return {
    attempts,
    unfinished: computed(() => newestUnfinished(kept.all.value)),
    report: audience.shown(() => reported.worked.value?.report ?? null),
    isFresh: audience.shown(() => isFresh.value),
    foreseen: foresight.foreseen,
    foresee: foresight.foresee,
    before: steady(computed(() => known.value.before)),
    knowledge: steady(computed(() => known.value.now)),
    isSettled: computed(() => isTold(told.value?.question ?? null) || reported.isDone.value),
    measured: computed(() => measuredShelves(known.value.before, known.value.now)),
    offers: audience.shown(() => {
      const worked = reported.worked.value;
      const report = worked && isOfKit(worked.question, inPlay.value) ? worked.report : null;
      return trialOffers(trialBedOf(inPlay.value.records), report, attempts.value);
    }),
    crowded: computed(() => crowded(kept.all.value)),
    lastDeleted: kept.removed,
    lastReadAtMs: computed(() => lastReadAt(attempts.value)),
    problem: computed(() => kept.problem.value ?? reported.problem.value),
    progress(id) {
      const attempt = kept.find(id);
      return attempt && progressOf(attempt);
    },
    cueLengthM(id) {
      const attempt = kept.find(id);
      return attempt ? lengths.of(attempt) : USUAL_CUE_LENGTH_M;
    },
    buttHeightM(id) {
      const attempt = kept.find(id);
      return attempt && buttHeightToRaise(attempt, sizesOf(attempt), lengths.of(attempt));
    },
    elevationFarOff(id, buttHeightM) {
      const attempt = kept.find(id);
      return (
        attempt && elevationFarOff(attempt, buttHeightM, sizesOf(attempt), lengths.of(attempt))
      );
    },
    ...createAttemptChanges({
      kept,
      lengths,
      choice: () => choiceOf(inPlay.peek().records),
      sizesOf,
      now,
      newId,
    }),
    flush: kept.flush,
    dispose() {
      stopNoting();
      foresight.dispose();
      reported.dispose();
    },
  };
}
