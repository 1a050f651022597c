import { computed, effect, type ReadonlySignal, signal, untracked } from '@preact/signals';
import { strokeOf } from '../engine/direct/shot';
import { allowedRad, type Target } from '../engine/goal/target';
import type { KitCorrelation, KitQuantity, KitSpread } from '../engine/kit/kit-spread';
import type { SomePlayers } from '../engine/player/some-players';
import type { StrokeProfile } from '../engine/room/stroke-profile';
import { SHOT_PROBLEMS } from '../words/shot-problems';
import type { PlayerRoom, PlayerRoomQuestion } from '../worker/room-client';
import { createAudience } from './audience';
import type { DeskModel } from './desk-model';
import { chanceSpread } from './player/learn-player';
import type { PlayerModel } from './player/player-model';
import type { Answered } from './shot-answers';

/**
 * Works out the room for error of an answered shot, and tells it once it is known, or null where it
 * cannot be, unless called off by the function it returns.
 */
export type AssessRoom = (
  question: PlayerRoomQuestion,
  done: (room: PlayerRoom | null) => void,
) => () => void;

/** How little is known of the kit in play, and how the errors of its quantities go together. */
export interface KnownSpread {
  readonly spread: KitSpread;
  readonly correlation: KitCorrelation;
}

export interface RoomPorts {
  readonly lastAnswer: ReadonlySignal<Answered | null>;
  readonly desk: Pick<DeskModel, 'pocket'>;
  readonly player: Pick<PlayerModel, 'profile' | 'known'>;
  readonly known: ReadonlySignal<KnownSpread>;
  /** How little was known of it before anything was measured. */
  readonly spreadBefore: ReadonlySignal<KitSpread>;
  readonly assess: AssessRoom;
  /** What was worked out of this at an earlier visit, where that is known. */
  readonly recall?: (question: PlayerRoomQuestion) => PlayerRoom | null;
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
}

/** What the present shot forgives, how sure its aim is, how often it goes. */
export interface RoomModel {
  /** The latest there is; null before the first. */
  readonly room: ReadonlySignal<PlayerRoom | null>;
  /** Whether {@link room} is that of the answer on screen, the pocket and the player. */
  readonly isFresh: ReadonlySignal<boolean>;
  /** One line on why there is no fresh one and will be none by itself; null where all is well. */
  readonly problem: ReadonlySignal<string | null>;
  /** Has another go at what could not be worked out. */
  tryAgain(): void;
  /** How far from the target line the object ball may leave, rad either way. */
  readonly allowedRad: ReadonlySignal<number | null>;
  /** Whether a quantity of the kit in play has been measured, rather than taken from its usual range. */
  isMeasured(quantity: KitQuantity): boolean;
  /** Stops watching. */
  dispose(): void;
}

/** All that the room for error depends on. */
interface Question {
  readonly answered: Answered;
  readonly target: Target;
  readonly profile: StrokeProfile;
  /** What of the kit's unknowns counts as chance for them. */
  readonly chanceSpread: KitSpread;
  readonly some: SomePlayers | null;
  readonly known: KnownSpread;
}

const NOT_WORKED_OUT = SHOT_PROBLEMS.roomNotWorkedOut;

/** Known better than this share of what was assumed, a quantity counts as measured. */
const MEASURED_SHARE = 0.9;

/**
 * Assesses the room for error of the last answer while somebody looks at it, a moment after the last
 * change: it costs a hundred times what the aim does, and nobody reads it while a button is held.
 */
export function createRoomModel(ports: RoomPorts): RoomModel {
  const { lastAnswer, desk, player, known, spreadBefore, assess, recall, later } = ports;
  const target = computed<Target>(() => ({ kind: 'mouth', ...desk.pocket.value }));
  const question = computed<Question | null>(() => {
    const answered = lastAnswer.value;
    if (answered === null) return null;
    return {
      answered,
      target: target.value,
      profile: player.profile.value,
      chanceSpread: chanceSpread(player.known.value, known.value.spread),
      some: player.known.value?.some ?? null,
      known: known.value,
    };
  });
  const first = question.peek();
  const recalled = first && recall?.(jobOf(first));
  const assessed = signal<{ question: Question; room: PlayerRoom } | null>(
    first && recalled ? { question: first, room: recalled } : null,
  );
  const failed = signal<Question | null>(null);
  let callOff = () => {};
  const work = (asked: Question) => {
    callOff = assess(jobOf(asked), (room) => {
      if (room === null) failed.value = asked;
      else assessed.value = { question: asked, room };
    });
  };
  const audience = createAudience();
  const isFresh = () => assessed.value !== null && assessed.value.question === question.value;
  const hasFailed = () => failed.value !== null && failed.value === question.value;
  const dispose = effect(() => {
    const asked = audience.isThere.value ? question.value : null;
    callOff();
    if (asked === null || untracked(() => isFresh() || hasFailed())) return;
    callOff = later(() => work(asked));
  });
  return {
    room: audience.shown(() => assessed.value?.room ?? null),
    isFresh: audience.shown(isFresh),
    problem: audience.shown(() => (hasFailed() ? NOT_WORKED_OUT : null)),
    tryAgain() {
      const asked = failed.peek();
      failed.value = null;
      if (asked !== null && asked === question.peek()) work(asked);
    },
    allowedRad: computed(() => {
      const answered = lastAnswer.value;
      return answered && allowedRad(target.value, answered.kit.ballRadiusM);
    }),
    isMeasured: (quantity) =>
      known.value.spread[quantity] < MEASURED_SHARE * spreadBefore.value[quantity],
    dispose() {
      callOff();
      dispose();
    },
  };
}

function jobOf({ answered, known, ...asked }: Question): PlayerRoomQuestion {
  const { shot, kit, answer } = answered;
  const { target, profile, chanceSpread, some } = asked;
  const { spread, correlation } = known;
  const stroke = strokeOf(shot, answer.aimRad);
  return { balls: shot, target, kit, stroke, profile, some, spread, chanceSpread, correlation };
}
