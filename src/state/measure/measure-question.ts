import { computed, type ReadonlySignal } from '@preact/signals';
import { INVENTED_PROFILES, type StrokeProfile } from '../../engine/room/stroke-profile';
import type { Attempt } from '../../store/attempt';
import type { ShelfContents } from '../../store/contents';
import type { PlayerName } from '../../store/records';
import { progressOf } from './attempt-progress';
import { kitPriorOf, OWN_PRIORS } from './part-prior';
import { indexShelves, type Played, type PlayedAttempt, playedAttempt } from './parts-played';

/** All that the report depends on, but the shots whose aims it should serve. */
export interface MeasureQuestion {
  /** The kit in play. */
  readonly inPlay: Played;
  readonly shelves: ShelfContents;
  /** All that count, of whatever kit. */
  readonly attempts: readonly PlayedAttempt[];
  readonly profile: StrokeProfile;
  /** The same for the same question. */
  readonly key: string;
  /** The same for the same kit, with the same numbers. */
  readonly kitKey: string;
}

export interface QuestionPorts {
  readonly inPlay: ReadonlySignal<Played>;
  readonly shelves: ReadonlySignal<ShelfContents>;
  readonly attempts: ReadonlySignal<readonly Attempt[]>;
  readonly player: ReadonlySignal<PlayerName>;
}

/** The present question; it stays the very same while nothing that matters changes. */
export function presentQuestion(ports: QuestionPorts): ReadonlySignal<MeasureQuestion> {
  let last: MeasureQuestion | null = null;
  return computed(() => {
    const question = questionOf(
      ports.inPlay.value,
      ports.shelves.value,
      ports.attempts.value,
      INVENTED_PROFILES[ports.player.value],
    );
    if (last?.key !== question.key) last = question;
    return last;
  });
}

function questionOf(
  inPlay: Played,
  shelves: ShelfContents,
  all: readonly Attempt[],
  profile: StrokeProfile,
): MeasureQuestion {
  const counting = all.filter(counts);
  const index = indexShelves(shelves);
  const attempts = counting.flatMap((attempt) => playedAttempt(attempt, index) ?? []);
  const key = JSON.stringify([inPlay, shelves, counting, profile], withoutNames);
  return { inPlay, shelves, attempts, profile, key, kitKey: kitKeyOf(inPlay) };
}

/** Whether there are no readings to tell anything. */
export function isUnread({ attempts }: MeasureQuestion): boolean {
  return attempts.length === 0;
}

/** Whether an attempt tells anything: it is finished, read and not struck out. */
function counts(attempt: Attempt): boolean {
  const { isStruckOut, readings } = attempt;
  return !isStruckOut && progressOf(attempt).now === null && Object.keys(readings).length > 0;
}

/** What a record is called tells nothing of it. */
function withoutNames(key: string, value: unknown): unknown {
  return key === 'name' || key === 'origin' ? undefined : value;
}

/** The kit by its parts and the numbers that can be measured of it. */
export function kitKeyOf(played: Played): string {
  const { kit } = kitPriorOf(played, OWN_PRIORS);
  const { tipRadiusM: _tip, ballRadiusM: _ball, ...measurable } = kit;
  return JSON.stringify([played.parts, measurable]);
}
