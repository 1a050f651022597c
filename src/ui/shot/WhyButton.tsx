import type { Models } from '../app-models';
import { isRoomStale } from './room-of-field';
import { roomSummary } from './room-summary';
import './WhyButton.css';

/** How often the shot goes and how sure the aim is; a tap tells why, of that and of the aim. */
export function WhyButton({ app }: { app: Models<'shot' | 'room' | 'desk' | 'router'> }) {
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
        {isWaiting && ' …'}
      </b>{' '}
      <span class="why-certainty">{summary?.certainty}</span> <span class="why-word">Why</span>
    </button>
  );
}
