import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { NOTHING_CHOSEN, type SavedPosition } from '../../store/saved-position';
import { createKeptRows, type KeptRows } from '../kept-rows';
import type { ChoosePorts } from './choose-ports';

/** Every position, and which of them is open. */
export interface KeptPositions extends KeptRows<SavedPosition> {
  readonly openId: ReadonlySignal<string>;
  /** The open one as it was saved; one that is empty and not kept yet where there is none. */
  readonly open: ReadonlySignal<SavedPosition>;
  /** Opens a position, which comes first from now on. */
  openOne(id: string): void;
  /** Opens whatever comes first. */
  openFirst(): void;
  /** One with no balls. */
  blank(name: string): SavedPosition;
}

type Ports = Pick<ChoosePorts, 'store' | 'positions' | 'table'> & {
  readonly now: () => number;
  readonly newId: () => string;
};

/** They are shown the last used first; one that is only changed keeps its place. */
export function createKeptPositions(ports: Ports): KeptPositions {
  const { store, positions, table, now, newId } = ports;
  let inOrder = positions.map(({ id }) => id);
  const rows = createKeptRows({ store, list: 'positions', order }, positions);
  /** One that has no place yet comes first. */
  function order(all: readonly SavedPosition[]) {
    const places = new Map(inOrder.map((id, place) => [id, place]));
    const fresh = all.filter(({ id }) => !places.has(id));
    inOrder = [...fresh.map(({ id }) => id), ...inOrder];
    const placeOf = ({ id }: SavedPosition) => places.get(id) ?? -1;
    return [...all].sort((one, other) => placeOf(one) - placeOf(other));
  }

  const blank = (name: string): SavedPosition => {
    const { lengthM, widthM } = table.peek();
    const origin = 'by-hand';
    const goal = NOTHING_CHOSEN;
    const made = { id: newId(), name, origin, lengthM, widthM, balls: [], goal } as const;
    return { ...made, zone: null, changedAtMs: now() };
  };
  const first = () => rows.all.peek().find(({ drill }) => !drill) ?? blank(FIRST_NAME);
  const opened = signal(first());

  return {
    ...rows,
    openId: computed(() => opened.value.id),
    open: computed(() => rows.find(opened.value.id) ?? opened.value),
    openOne(id) {
      const position = rows.find(id);
      if (position === null) return;
      inOrder = [id, ...inOrder.filter((other) => other !== id)];
      rows.show(position);
      opened.value = position;
    },
    openFirst() {
      opened.value = first();
    },
    blank,
  };
}

const FIRST_NAME = 'Position 1';
