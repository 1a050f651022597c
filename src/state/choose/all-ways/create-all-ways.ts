import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import type { WaysQuestion } from '../../../engine/ways/ways-question';
import type { LaidWay } from '../../../engine/worth/laid-way';
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
  /** A way that came from elsewhere with the open position, which lies as it came; null: none did. */
  readonly brought: ReadonlySignal<LaidWay | null>;
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
  const { present, isShot, brought, work, later } = ports;
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
  /** The last way brought that was worked out, or could not be. */
  const laid = signal<LaidWay | null>(null);
  const speaking = createSpeaking(ports.speaker);
  const filter = computed<WayFilter>(
    () => wanted.value ?? (isShot.value && brought.value === null ? 'direct' : 'all'),
  );
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
  const layOut = async (way: LaidWay, question: AskedFor, work: Work) => {
    const search = asking.begin(question, { ...NOTHING, state: 'running' });
    const refuse = (problem: string) => {
      if (search.signal.aborted) return;
      laid.value = way;
      search.show(() => ({ state: 'failed', problem }));
    };
    try {
      const worked = await work('wayLaid', { question, way }, search.signal);
      if (worked === null) return refuse(CHOOSE_PROBLEMS.notHere);
      const fan = await work('waysFan', { question, told: worked.told }, search.signal);
      const shown = { key: 'laid', fan, ...worked };
      batch(() => {
        laid.value = way;
        choose(shown);
        search.show(() => ({ state: 'none', ways: [shown] }));
      });
    } catch {
      refuse(CHOOSE_PROBLEMS.failed);
    }
  };
  const isLaying = computed(() => {
    const isDue = brought.value !== null && brought.value !== laid.value;
    return isDue && work !== null && typeof present.value !== 'string';
  });
  const begin = () => {
    const [way, question] = [brought.peek(), present.peek()];
    if (!isLaying.peek() || way === null || work === null || typeof question === 'string') {
      return look();
    }
    void layOut(way, question, work);
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
    (typeof present.value === 'string'
      ? shown.value.problem !== present.value
      : !isAsked.value || isOnlyLaid(shown.value));
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
    isLaying,
    isMoved,
    toLog,
    attend: () => {
      const end = workAtRest([{ isDue, begin }], later);
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

/** Whether nothing was looked for, and all there is came from elsewhere. */
function isOnlyLaid({ state, ways }: Shown): boolean {
  return state === 'none' && ways.length > 0;
}

/** What a stroke does hangs on this; whoever plays it. */
function liesOf({ position, shape, kit, legal }: WaysQuestion) {
  return { position, shape, kit, legal };
}

/** All but what more logged shots, or more readings, change: ways told stand until asked for anew. */
function whatCounts({ spread, correlation, profile, ...rest }: AskedFor) {
  return rest;
}
