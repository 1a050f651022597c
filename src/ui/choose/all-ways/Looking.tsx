import type { WaysOrder } from '../../../engine/worth/worthy-ways';
import type { WaysSearch } from '../../../state/choose/all-ways/all-ways';
import type { Models } from '../../app-models';
import { AskOnce } from '../../player/AskOnce';
import { ORDER_LINES } from './worth-words';

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
  const words = putInOrder
    ? 'All is looked at: put in order when you like.'
    : lookWords(search, order);
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
          <AskOnce app={app} panel="ways/question" />
          <div class="order-row">
            <p class="way-reason">{ORDER_LINES[order]}</p>
            <button
              type="button"
              class="button"
              onClick={() => all.orderBy(order === 'worth' ? 'goes' : 'worth')}
            >
              {order === 'worth' ? 'Likeliest first' : 'Wisest first'}
            </button>
          </div>
        </>
      )}
      {(state === 'stopped' || state === 'failed') && (
        <button type="button" class="button compare-do" onClick={() => all.look()}>
          Look again
        </button>
      )}
    </div>
  );
}

/** Said of the search as it stands. */
function lookWords(
  { state, done, of, ways, isStale, problem }: WaysSearch,
  order: WaysOrder,
): string {
  if (problem !== null) return problem;
  if (isStale) return 'Something has changed: looking anew…';
  const few = ways.length === 1 ? '1 way' : `${ways.length} ways`;
  if (state === 'stopped') return `Stopped early: ${few} so far.`;
  if (state === 'done') {
    if (ways.length === 0) return 'Nothing goes.';
    return `${few}, the ${order === 'worth' ? 'wisest' : 'likeliest'} first.`;
  }
  return state === 'none' ? '' : `${done} of ${of} looked at, ${few} so far.`;
}
