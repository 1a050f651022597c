import type { ComponentChild, VNode } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Late } from '../state/late';
import { headingIn } from './use-kept-focus';
import './LatePart.css';

interface Props<T> {
  readonly part: Late<T>;
  /** Said of a part that is a whole place: the page's main landmark is never missing. */
  readonly wrapper?: 'main' | 'div';
  /** Loads the page anew. */
  readonly reload: () => void;
  readonly children: (part: T) => VNode;
}

/** What comes once the first answer stands, or a quiet place for it until then. */
export function LatePart<T>({ part, wrapper = 'div', reload, children }: Props<T>): ComponentChild {
  const { here, isAway, fetch } = part;
  useEffect(() => void fetch(), [fetch]);
  const isHere = here.value !== null;
  useEffect(() => {
    if (isHere) focusHeading();
  }, [isHere]);
  if (here.value !== null) return children(here.value);
  const Wrapper = wrapper;
  return (
    <Wrapper class="late-part">
      <output>{isAway.value && <Away reload={reload} />}</output>
    </Wrapper>
  );
}

/** The keyboard waits on the place for the heading of a panel that is to fill it. */
function focusHeading(): void {
  const focused = document.activeElement;
  if (focused?.matches('main')) headingIn(focused)?.focus({ preventScroll: true });
}

/** Some browsers ask for a script once and never again: loading the page anew is the way out. */
function Away({ reload }: { reload: () => void }) {
  return (
    <>
      <span>
        This part is not on the device yet, and could not be fetched. It comes by itself once there
        is a network; if it does not, load the app again.
      </span>
      <button type="button" class="button" onClick={() => reload()}>
        Load again
      </button>
    </>
  );
}
