import { computed } from '@preact/signals';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { Attempt } from '../../store/attempt';
import { freshId } from '../../store/fresh-id';
import { isSame } from '../../store/same-value';
import { crowded } from '../crowded';
import type { DeskModel } from '../desk-model';
import { aimGain } from './aim-gain';
import { createAttemptChanges } from './attempt-changes';
import { progressOf } from './attempt-progress';
import { newestUnfinished, shotsReadOn } from './attempts-of-kit';
import {
  buttHeightToRaise,
  createCueLengths,
  elevationFarOff,
  USUAL_CUE_LENGTH_M,
} from './butt-height';
import type { KnownKit, KnownKitParts } from './create-known-kit';
import type { WorkOut } from './find-priors';
import { createForesight } from './foresight';
import { choiceOf } from './kit-in-play';
import { knownAlongShot } from './known-along-shot';
import { isOfKit } from './known-of-kit';
import type { MeasureModel } from './measure-model';
import { playedAttempt, trialBedOf } from './parts-played';
import { trialOffers } from './trial-offers';
import type { Foresee } from './work-report';

export interface MeasurePorts {
  /** The shot whose aim is to be sure enough. */
  readonly desk: Pick<DeskModel, 'shot' | 'pocket' | 'preferences'>;
  /** Works out what readings tell; null where the browser cannot. */
  readonly fit: WorkOut | null;
  /** Works out what was to be expected of one; null where the browser cannot. */
  readonly foresee: Foresee | null;
  /** The time of day, ms since 1970. */
  readonly now?: () => number;
  readonly newId?: () => string;
}

/** The trials, over what is known of the kit in play. */
export function createMeasureModel(
  knownKit: KnownKit & { readonly parts: KnownKitParts },
  { desk, fit, foresee, now = Date.now, newId = freshId }: MeasurePorts,
): MeasureModel {
  const { kept, inPlay, question, reported, isFresh, known, served, index, audience } =
    knownKit.parts;
  const { attempts } = knownKit;
  const foresight = createForesight({ question, isFresh, workOut: fit, foresee });
  const lengths = createCueLengths(() => kept.all.value);
  const sizesOf = (attempt: Attempt) => {
    const { cues, balls } = (playedAttempt(attempt, index.value) ?? inPlay.value).records;
    return { ballRadiusM: balls.ballRadiusM, tipRadiusM: cues.tipRadiusM };
  };
  const gainSince = (earlier: KitKnowledge) => {
    const shot = desk.shot.value;
    const along = (one: KitKnowledge) =>
      knownAlongShot(one, inPlay.value.records.tables.bedSlope, shot.headingRad);
    const asked = { shot, pocket: desk.pocket.value, lead: desk.preferences.value.lead };
    return aimGain(asked, along(earlier), along(known.value.now));
  };
  const toGo = audience.shown(() => {
    const worked = reported.worked.value;
    const told = worked && isSame(worked.served, served()) ? worked.report.toGo : null;
    const gain = told && gainSince(known.value.now);
    // Two ways lead to one deviation, near enough: what Shot shows has the last word.
    if (told === null || gain === null) return null;
    const shots = told.shots === null ? null : Math.max(1, told.shots);
    return { ...told, shots: gain.isEnough ? 0 : shots };
  });

  return {
    ...knownKit,
    unfinished: computed(() => newestUnfinished(kept.all.value)),
    report: audience.shown(() => reported.worked.value?.report ?? null),
    isFresh: audience.shown(() => isFresh.value),
    shotsReadOn: (shelf, record) => shotsReadOn(question.value.attempts, shelf, record),
    foreseen: foresight.foreseen,
    foresee: foresight.foresee,
    offers: audience.shown(() => {
      const worked = reported.worked.value;
      const report = worked && isOfKit(worked.question, inPlay.value) ? worked.report : null;
      const { shots, first } = toGo.value ?? {};
      const serves = report && shots !== 0 && first ? first.shot : null;
      return trialOffers(trialBedOf(inPlay.value.records), report, attempts.value, serves);
    }),
    crowded: computed(() => crowded(kept.all.value)),
    lastDeleted: kept.removed,
    problem: computed(() => kept.problem.value ?? reported.problem.value),
    toGo,
    aimGain: gainSince,
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
    dispose() {
      foresight.dispose();
      knownKit.dispose();
    },
  };
}
