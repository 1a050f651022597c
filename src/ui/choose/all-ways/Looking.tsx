import type { WayFilter, WaysSearch } from '../../../state/choose/all-ways/all-ways';
import type { ListOrder } from '../../../state/choose/all-ways/list-order';
import type { Models } from '../../app-models';
import { AskOnce } from '../../player/AskOnce';
import { foundOf, listed } from './KindChips';
import { countWords } from './kind-words';
import { ORDER_BUTTONS, ORDER_LINES } from './worth-words';

interface Props {
  readonly app: Models<'choose' | 'player' | 'router'>;
  /** Puts the rows in order; null where they are. */
  readonly putInOrder: (() => void) | null;
}

/** How far the search has come, which begins by itself, and how to end it or to begin anew. */
export function Looking({ app, putInOrder }: Props) {
  const { all } = app.choose;
  const search = all.search.value;
  const { state, done, of } = search;
  const order = all.order.value;
  // Those that stand, and nobody is asked about anything meanwhile.
  const isOutrun = state === 'done' && search.isOutrun && putInOrder === null;
  const words = putInOrder
    ? 'All is looked at: put in order when you like.'
    : lookWords(search, order, all.filter.value);
  return (
    <div class="compare">
      <p class="compare-note">{words}</p>
      {/* Every count read out would drown whatever else is. */}
      <output class="visually-hidden">
        {state === 'running' ? 'Looking at all ways…' : words}
      </output>
      {putInOrder && (
        <button type="button" class="button compare-do" onClick={putInOrder}>
          Put in order
        </button>
      )}
      {state === 'running' && (
        <>
          <button type="button" class="button compare-do" onClick={() => all.stop()}>
            Stop
          </button>
          <progress aria-label="Ways looked at" value={done} max={of}>
            {done} of {of}
          </progress>
        </>
      )}
      {state === 'done' && search.ways.length > 0 && putInOrder === null && (
        <>
          {!isOutrun && <AskOnce app={app} panel="ways/question" />}
          <div class="order-row">
            <p class="way-reason">
              {ORDER_LINES[order]}
              {isOutrun && ' You have logged more since, which is not counted.'}
            </p>
            {all.orders.value
              .filter((other) => other !== order)
              .map((other) => (
                <button key={other} type="button" class="button" onClick={() => all.orderBy(other)}>
                  {ORDER_BUTTONS[other]}
                </button>
              ))}
          </div>
        </>
      )}
      {(state === 'stopped' || state === 'failed' || isOutrun) && (
        <button type="button" class="button compare-do" onClick={() => all.look()}>
          Look again
        </button>
      )}
    </div>
  );
}

/** Said of the search as it stands. */
function lookWords(search: WaysSearch, order: ListOrder, filter: WayFilter): string {
  const { state, done, of, isStale, problem } = search;
  if (problem !== null) return problem;
  if (isStale) return 'Something has changed: looking anew…';
  const ways = listed(search.ways, filter);
  const few = countWords(ways.length, filter);
  if (state === 'stopped') return `Stopped early: ${few} so far.`;
  if (state === 'done') {
    if (search.ways.length === 0) return 'Nothing goes.';
    const found = foundOf(ways, search.found, filter);
    const isAll = found === ways.length;
    const told = isAll ? few : `${ways.length} of ${countWords(found, filter)} found`;
    return `${told}, ${ORDER_BUTTONS[order].toLowerCase()}.`;
  }
  return state === 'none' ? '' : `${done} of ${of} looked at, ${few} so far.`;
}
