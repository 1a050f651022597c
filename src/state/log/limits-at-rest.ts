import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { LevelTable } from '../../engine/player/level-test';
import type { Limits, LimitsJob } from '../../engine/player/limits';
import type { PlayedShot } from '../../store/player';
import { isSame } from '../../store/same-value';
import type { Work } from '../../worker/engine-pool';
import { chanceSpread } from '../player/learn-player';
import type { PlayerModel } from '../player/player-model';

/** What limits whoever plays, worked out at rest while somebody looks at it. */
export interface LimitsAtRest {
  /** Null while nothing is known of them, and until it is worked out. */
  readonly limits: ReadonlySignal<Limits | null>;
  /** Has it worked out until the function it returns is called. */
  weigh(): () => void;
}

export interface LimitsPorts {
  readonly player: Pick<PlayerModel, 'played' | 'known'>;
  readonly level: ReadonlySignal<LevelTable>;
  /** Null where the browser cannot work beside the page. */
  readonly work: Work | null;
  readonly later: (work: () => void) => () => void;
}

export function createLimitsAtRest({ player, level, work, later }: LimitsPorts): LimitsAtRest {
  const isWeighing = signal(false);
  const told = signal<{ of: LimitsJob; limits: Limits | null } | null>(null);
  const job = computed((): LimitsJob | null => {
    const known = player.known.value;
    if (known === null) return null;
    const table = level.value;
    return {
      own: ownShots(player.played.value).map(({ shot, target, kit, spread, drill }) => ({
        shot,
        target,
        kit,
        spread: chanceSpread(known, spread),
        rest: drill?.rung?.rest ?? null,
      })),
      profile: known.profile,
      table: { ...table, spread: chanceSpread(known, table.spread) },
    };
  });
  let callOff = () => {};
  effect(() => {
    callOff();
    const of = job.value;
    if (!isWeighing.value || of === null || work === null || isSame(told.peek()?.of, of)) return;
    callOff = later(() => {
      work('limits', of).then(
        (limits) => {
          told.value = { of, limits };
        },
        // It is told of nowhere else: what is there stands.
        () => {},
      );
    });
  });
  return {
    limits: computed(() => (job.value === null ? null : (told.value?.limits ?? null))),
    weigh() {
      isWeighing.value = true;
      return () => {
        isWeighing.value = false;
      };
    },
  };
}

/** So many are looked at. */
const MOST = 12;

/** The newest that count, the oldest first; of one that was played again and again the last alone. */
function ownShots(played: readonly PlayedShot[]): readonly PlayedShot[] {
  const own: PlayedShot[] = [];
  for (let at = played.length - 1; at >= 0 && own.length < MOST; at--) {
    const shot = played[at];
    if (shot?.asMeant && !own.some((other) => isSame(other.shot, shot.shot))) own.push(shot);
  }
  return own.reverse();
}
