import { useRef, useState } from 'preact/hooks';
import type { ShownWay } from '../../../state/choose/all-ways/shown-way';

interface Steady {
  readonly rows: readonly ShownWay[];
  /** Put in order again; null where they are in order, or not all there yet. */
  readonly putInOrder: (() => void) | null;
}

const LIST = '.way-list';
const SCROLLERS = '.choose-place, .choose-sheet';

/**
 * Rows keep their places while more come below. Once all are there they are put in order, and some are folded away, but not
 * under the eyes of who has scrolled down to them or has the focus there: who reads says when.
 */
export function useSteadyRows(ways: readonly ShownWay[], isInOrder: boolean): Steady {
  const before = useRef({ ways, isInOrder });
  const held = useRef<readonly ShownWay[] | null>(null);
  const [, draw] = useState(0);
  const was = before.current;
  before.current = { ways, isInOrder };
  if (!isInOrder) held.current = null;
  else if (!was.isInOrder && was.ways.length > 0 && isInHand()) held.current = was.ways;
  const rows = held.current;
  if (rows === null) return { rows: ways, putInOrder: null };
  return {
    rows,
    putInOrder() {
      held.current = null;
      draw((count) => count + 1);
    },
  };
}

function isInHand(): boolean {
  const isScrolled = [...document.querySelectorAll(SCROLLERS)].some((one) => one.scrollTop > 0);
  return isScrolled || document.querySelector(LIST)?.contains(document.activeElement) === true;
}
