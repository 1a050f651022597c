import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { WaysQuestion } from '../../../engine/ways/ways-question';
import type { Speaker } from '../../../sensors/find-speaker';
import { isSame } from '../../../store/same-value';
import { CHOOSE_PROBLEMS } from '../../../words/choose-problems';
import type { Work } from '../../../worker/engine-pool';
import type { ShotToLog } from '../../log/shot-to-log';
import type { Asked } from '../../shot-field';
import type { ShotModel } from '../../shot-model';
import { createAsking } from '../asking';
import { type Later, workAtRest } from '../work-at-rest';
import type { AllWays, WayFilter, WaysSearch } from './all-ways';
import { inOrder, type ListOrder } from './list-order';
import { lookForWays, RULE } from './look-for-ways';
import type { ShownWay } from './shown-way';
import { createSpeaking } from './speaking';
import type { AskedFor } from './ways-asked';

export interface AllWaysPorts {
  /** What would be asked now, or in one line why nothing can be. */
  readonly present: ReadonlySignal<AskedFor | string>;
  /** Whether one ball and one pocket are chosen, and a straight shot leads there. */
  readonly isShot: ReadonlySignal<boolean>;
  readonly work: Work | null;
  readonly later: Later;
  readonly speaker: Speaker | null;
  /** A direct cut as Shot asks it, and as it is logged; null where there is no such shot. */
  asShot(way: ShownWay): Asked | null;
  asLogged(way: ShownWay): ShotToLog | null;
  ask: ShotModel['ask'];
}

const ORDERS: readonly ListOrder[] = ['worth', 'goes', 'zone'];

type Shown = Omit<WaysSearch, 'isStale' | 'isOutrun'>;

const NOTHING: Shown = {
  state: 'none',
  done: 0,
  of: 0,
  ways: [],
  found: [],
  none: [],
  problem: null,
};

/** All ways to play the open position, looked for by themselves while somebody looks at them. */
export function createAllWays(ports: AllWaysPorts): AllWays & { forget(): void } {
  const { present, isShot, work, later } = ports;
  const asking = createAsking<AskedFor, Shown>(present, NOTHING, whatCounts);
  const { shown, asked, isAsked, isStale, show } = asking;
  const wanted = signal<WayFilter | null>(null);
  const wantedOrder = signal<ListOrder>('worth');
  const orders = computed((): readonly ListOrder[] => {
    const { value } = present;
    const hasZone = typeof value !== 'string' && value.zone !== null;
    return hasZone ? ORDERS : ORDERS.slice(0, 2);
  });
  const order = computed(() =>
    orders.value.includes(wantedOrder.value) ? wantedOrder.value : 'goes',
  );
  const chosen = signal<ShownWay | null>(null);
  const speaking = createSpeaking(ports.speaker);
  const filter = computed<WayFilter>(() => wanted.value ?? (isShot.value ? 'direct' : 'all'));
  const isDirect = computed(() => filter.value === 'direct' && isShot.value);
  const lies = (asked: AskedFor | string | null) =>
    typeof asked === 'string' || asked === null ? asked : liesOf(asked);
  const isMoved = computed(() => !isSame(lies(present.value), lies(asked.value)));

  const choose = (way: ShownWay | null) => {
    speaking.hush();
    chosen.value = way;
  };
  const run = async (asked: AskedFor, work: Work) => {
    const search = asking.begin(asked, { ...NOTHING, state: 'running', of: RULE.most });
    try {
      const found = await lookForWays(asked, work, search.signal, {
        onProgress: (done, of) => search.show(() => ({ done, of })),
        onWay: (way) => search.show(() => ({ ways: [...shown.peek().ways, way] })),
      });
      search.show(() => ({ state: 'done', ...found }));
    } catch {
      search.show(() => ({ state: 'failed', problem: CHOOSE_PROBLEMS.failed }));
      search.drop();
    }
  };
  const look = () => {
    const now = present.peek();
    choose(null);
    if (work === null || typeof now === 'string') {
      asking.forget();
      show({ problem: typeof now === 'string' ? now : CHOOSE_PROBLEMS.noWorkers });
      return;
    }
    void run(now, work);
  };
  /** Whoever looks at a way is not sent away from it. */
  const isDue = () =>
    chosen.value === null &&
    !isDirect.value &&
    (typeof present.value === 'string' ? shown.value.problem !== present.value : !isAsked.value);
  const isOutrun = computed(
    () => asked.value !== null && isAsked.value && !isSame(present.value, asked.value),
  );
  const toLog = computed(() => {
    const way = chosen.value;
    return way === null || isMoved.value ? null : ports.asLogged(way);
  });

  const toAsk = computed(() => {
    const way = chosen.value;
    const asked = way === null || isMoved.value ? null : ports.asShot(way);
    const goal = way?.told.goal;
    return asked && goal && goal.kind !== 'safety' ? { asked, of: goal } : null;
  });

  return {
    ...speaking,
    filter,
    isDirect,
    show(kind) {
      choose(null);
      wanted.value = kind;
    },
    search: computed(() => {
      const now = { ...shown.value, isStale: isStale.value, isOutrun: isOutrun.value };
      return now.state === 'done' ? { ...now, ways: inOrder(now.ways, order.value) } : now;
    }),
    orders,
    order,
    orderBy(asked) {
      wantedOrder.value = asked;
    },
    chosen,
    choose,
    isMoved,
    toLog,
    attend: () => {
      const end = workAtRest([{ isDue, begin: look }], later);
      return () => {
        end();
        speaking.hush();
      };
    },
    look,
    stop: asking.stop,
    toAsk,
    sendToShot() {
      const way = toAsk.peek();
      if (way !== null) ports.ask(way.asked, way.of);
      return way !== null;
    },
    /** As if nothing had been looked for, and nothing picked. */
    forget() {
      choose(null);
      wanted.value = null;
      asking.forget();
    },
  };
}

/** What a stroke does hangs on this; whoever plays it. */
function liesOf({ position, shape, kit, legal }: WaysQuestion) {
  return { position, shape, kit, legal };
}

/** All but what more logged shots, or more readings, change: ways told stand until asked for anew. */
function whatCounts({ spread, correlation, profile, ...rest }: AskedFor) {
  return rest;
}
