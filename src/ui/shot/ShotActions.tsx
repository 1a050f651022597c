import type { Models } from '../app-models';
import { isRoomStale } from './room-of-field';
import { roomSummary } from './room-summary';
import './ShotActions.css';

/** Undo, set aside to compare, log, and how good the answer is. */
export function ShotActions({
  app,
}: {
  app: Models<'shot' | 'room' | 'player' | 'desk' | 'router'>;
}) {
  const { shot } = app;
  const isHolding = shot.comparison.value !== null;
  return (
    <div class="shot-actions">
      <button
        type="button"
        class="button"
        aria-label="Undo"
        disabled={!shot.canUndo.value}
        onClick={() => shot.undo()}
      >
        <span aria-hidden="true">↶</span> <span class="undo-word">Undo</span>
      </button>
      <button
        type="button"
        class="button"
        onClick={() => (isHolding ? shot.release() : shot.hold())}
      >
        {isHolding ? 'Let go' : 'Hold'}
      </button>
      <button
        type="button"
        class="button log-button"
        aria-label="Log how it went"
        data-opens="after"
        disabled={!shot.result.value.ok}
        onClick={() => app.router.open('after')}
      >
        Log<span class="log-word"> how it went</span>
      </button>
      <WhyButton app={app} />
    </div>
  );
}

/** How often the shot goes and how sure the aim is; a tap tells why, of that and of the aim. */
function WhyButton({ app }: { app: Models<'shot' | 'room' | 'player' | 'desk' | 'router'> }) {
  const { router, room } = app;
  const isOpen = router.route.value.panel === 'why';
  const summary = roomSummary(app);
  const isWaiting = room.problem.value === null && (summary === null || isRoomStale(app));
  const isStale = summary !== null && isWaiting;
  return (
    <button
      type="button"
      class={isStale ? 'button why-button is-stale' : 'button why-button'}
      data-opens="why"
      aria-expanded={isOpen}
      onClick={() => (isOpen ? router.close() : router.open('why'))}
    >
      <b class="why-chance">
        {summary?.chance}
        {summary?.range && <span class="why-range"> {summary.range}</span>}
        {isWaiting && ' …'}
      </b>{' '}
      <span class="why-certainty">{summary?.certainty}</span> <span class="why-word">Why</span>
    </button>
  );
}
