import { computed, signal } from '@preact/signals';
import type { WhyClosed } from '../../../../src/engine/goal/closed-pockets';
import { directCut } from '../../../../src/engine/goal/goal';
import type { NoShot, PositionShot } from '../../../../src/engine/goal/position-shot';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { frozenPairs, type Neighbour } from '../../../../src/engine/lie/neighbours';
import type { BallName, NamedBall } from '../../../../src/engine/lie/position';
import type { FanPlay, RankedWay } from '../../../../src/engine/plan/ranked-way';
import type { PocketName } from '../../../../src/engine/table/pocket-shape';
import type { ChooseModel, Comparison } from '../../../../src/state/choose/choose-model';
import { NOTHING_CHOSEN, type SavedPosition } from '../../../../src/store/saved-position';
import { comparisonOf, fanOf, SHAPE, shotFrom } from './invented-ways';

const OK = { ok: true } as const;
const NOT_THERE = { ok: false, problem: 'This one is no longer here.' } as const;

export const EMPTY: SavedPosition = {
  id: 'empty',
  name: 'Empty table',
  origin: 'by-hand',
  lengthM: 2.54,
  widthM: 1.27,
  balls: [],
  goal: NOTHING_CHOSEN,
  zone: null,
  changedAtMs: 2,
};

/** An invented position: a cut of the 3 into a far corner past the 11. */
export const CUT: SavedPosition = {
  ...EMPTY,
  id: 'cut',
  name: 'Cut into the corner',
  origin: 'invented',
  balls: [
    { name: 'cue', xM: -0.28, yM: -0.5 },
    { name: 3, xM: 0.12, yM: 0.42 },
    { name: 8, xM: 0.1, yM: -0.95 },
    { name: 11, xM: -0.4, yM: 0.62 },
    { name: 12, xM: -0.4 + 0.05715, yM: 0.62 },
  ],
  goal: directCut(3, 'far-right'),
  zone: { xM: -0.2, yM: -0.2, radiusM: 0.25 },
  changedAtMs: 1,
};

const NOTHING: Comparison = {
  state: 'none',
  progress: 0,
  map: null,
  ways: [],
  isStale: false,
  problem: null,
};

/** A model kept in memory that does as it is told and nothing more: no snapping, no storage. */
export function fakeChoose(first: SavedPosition = CUT) {
  const saved = signal<readonly SavedPosition[]>([first, first === CUT ? EMPTY : CUT]);
  const openId = signal(first.id);
  const selected = signal<BallName | null>(null);
  const past = signal<readonly SavedPosition[]>([]);
  const future = signal<readonly SavedPosition[]>([]);
  const comparison = signal<Comparison>(NOTHING);
  const chosen = signal<RankedWay | null>(null);
  const problem = signal<string | null>(null);
  const hindered = signal<Partial<PositionShot>>({});
  const refusal = signal<NoShot | null>(null);
  const neighbours = signal<readonly Neighbour[]>([]);
  const closed = signal<ReadonlyMap<PocketName, WhyClosed>>(new Map());
  const sent = signal<RankedWay | null>(null);
  const counts = { drags: 0, endDrags: 0 };
  let removed: SavedPosition | null = null;
  let isDragging = false;

  const open = computed(() => saved.value.find(({ id }) => id === openId.value) ?? EMPTY);
  const write = (next: SavedPosition) => {
    saved.value = saved.peek().map((one) => (one.id === next.id ? next : one));
  };
  const edit = (change: Partial<SavedPosition>) => {
    past.value = [...past.peek(), open.peek()];
    future.value = [];
    write({ ...open.peek(), ...change });
    return OK;
  };
  const withBall = (ball: NamedBall) => [
    ...open.peek().balls.filter(({ name }) => name !== ball.name),
    ball,
  ];
  const ballOf = (name: BallName) => open.peek().balls.find((one) => one.name === name) ?? null;
  const geometry = computed(() => {
    const { balls, goal } = open.value;
    const cue = balls.find(({ name }) => name === 'cue');
    const object = balls.find(({ name }) => name === goal.ball);
    if (!cue || !object || goal.pocket === null) return null;
    return { cue, object, shot: shotFrom(cue, object, goal.pocket) };
  });
  const shot = computed((): PositionShot | NoShot | null => {
    const lie = geometry.value?.shot;
    if (!lie) return null;
    return refusal.value ?? { ...lie, ...hindered.value };
  });
  const step = (from: typeof past, to: typeof past) => {
    const last = from.peek().at(-1);
    if (!last) return;
    to.value = [...to.peek(), open.peek()];
    from.value = from.peek().slice(0, -1);
    write(last);
  };
  const fan = computed((): readonly FanPlay[] => {
    const lie = geometry.value;
    const way = chosen.value;
    if (!lie?.shot || !way) return [];
    const others = open.value.balls.filter((one) => one !== lie.cue && one !== lie.object);
    return fanOf(way.option.stroke, lie.shot, [lie.cue, lie.object, ...others]);
  });

  const choose: ChooseModel = {
    shape: signal(SHAPE),
    saved,
    crowded: signal<string | null>(null),
    open,
    selected,
    neighbours,
    frozenPairs: computed(() => frozenPairs(open.value.balls, DEFAULT_KIT)),
    closed,
    canUndo: computed(() => past.value.length > 0),
    canRedo: computed(() => future.value.length > 0),
    shot,
    lastShot: computed(() => geometry.value?.shot ?? null),
    comparison,
    chosen,
    fan,
    problem,
    select(name) {
      selected.value = name;
    },
    place: (name, xM, yM) => edit({ balls: withBall({ name, xM, yM }) }),
    putDown: (name) => edit({ balls: withBall({ name, xM: 0, yM: 0 }) }),
    drag(name, xM, yM) {
      counts.drags++;
      if (!isDragging) edit({});
      isDragging = true;
      write({ ...open.peek(), balls: withBall({ name, xM, yM }) });
      return OK;
    },
    endDrag() {
      counts.endDrags++;
      isDragging = false;
    },
    cancelDrag() {
      const before = past.peek().at(-1);
      if (!isDragging || !before) return;
      isDragging = false;
      past.value = past.peek().slice(0, -1);
      write(before);
    },
    nudge(name, rightM, upM) {
      const ball = ballOf(name);
      if (!ball) return NOT_THERE;
      return edit({ balls: withBall({ name, xM: ball.xM + rightM, yM: ball.yM + upM }) });
    },
    freeze: (name) => edit({ balls: withBall({ name, xM: 0.6, yM: ballOf(name)?.yM ?? 0 }) }),
    takeOff: (name) => edit({ balls: open.peek().balls.filter((one) => one.name !== name) }),
    ballAt: (name) => open.value.balls.find((one) => one.name === name) ?? null,
    beginGesture() {},
    endGesture() {},
    undo: () => step(past, future),
    redo: () => step(future, past),
    playBall(ball) {
      edit({ goal: { ...open.peek().goal, ball } });
    },
    playInto(pocket) {
      edit({ goal: { ...open.peek().goal, pocket } });
    },
    markZone(zone) {
      edit({ zone });
    },
    openPosition(id) {
      if (!saved.peek().some((one) => one.id === id)) return NOT_THERE;
      openId.value = id;
      return OK;
    },
    add() {
      const id = `new-${saved.peek().length}`;
      saved.value = [{ ...EMPTY, id, name: 'New position' }, ...saved.peek()];
      openId.value = id;
      return id;
    },
    duplicate(id) {
      const one = saved.peek().find((position) => position.id === id);
      if (!one) return NOT_THERE;
      saved.value = [...saved.peek(), { ...one, id: `${id}-copy`, name: `${one.name} (copy)` }];
      return OK;
    },
    rename(id, name) {
      if (name.trim() === '') return { ok: false, problem: 'A position needs a name.' };
      const one = saved.peek().find((position) => position.id === id);
      if (one) write({ ...one, name });
      return OK;
    },
    remove(id) {
      removed = saved.peek().find((one) => one.id === id) ?? null;
      saved.value = saved.peek().filter((one) => one.id !== id);
      return OK;
    },
    restore() {
      if (removed) saved.value = [removed, ...saved.peek()];
      return OK;
    },
    compare() {
      const lie = geometry.peek();
      if (!lie?.shot) return;
      const { ways, map } = comparisonOf(lie.shot, lie.cue, lie.object);
      comparison.value = { ...NOTHING, state: 'done', progress: 1, ways, map };
    },
    stop() {
      comparison.value = { ...comparison.peek(), state: 'stopped' };
    },
    choose(way) {
      chosen.value = way;
    },
    chooseCell(side, speed) {
      chosen.value =
        comparison
          .peek()
          .ways.find(
            ({ option }) => option.stroke.side === side && option.stroke.speedMps === speed,
          ) ?? null;
    },
    sendToShot() {
      sent.value = chosen.peek();
      return sent.peek() !== null;
    },
    flush: async () => {},
  };
  return { choose, comparison, problem, hindered, refusal, neighbours, closed, sent, counts };
}
