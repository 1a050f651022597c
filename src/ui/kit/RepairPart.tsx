import type { RepairModel } from '../../state/repair-model';

/** The way out when the app itself is at fault, not what is kept in it. */
export function RepairPart({ repair }: { repair: RepairModel }) {
  const isWorking = repair.isWorking.value;
  return (
    <>
      <h2>If the app misbehaves</h2>
      <p>
        Repairing it fetches the app anew, and leaves all you keep as it is. It needs a network, and
        does nothing without one.
      </p>
      <button
        type="button"
        class="button"
        disabled={isWorking}
        onClick={() => void repair.repair()}
      >
        Repair the app
      </button>
      <output class="place-problem">{isWorking ? 'Fetching…' : repair.problem.value}</output>
    </>
  );
}

/** Says after a repair that it was done: the page it brings looks like the one before. */
export function Repaired({ repair }: { repair: RepairModel }) {
  if (repair.doneAtMs === null) return null;
  const time = new Date(repair.doneAtMs).toLocaleTimeString([], { timeStyle: 'short' });
  return (
    <p class="place-problem" role="status">
      <span aria-hidden="true">✓</span> The app is fresh ({import.meta.env.LEEWAY_VERSION}, {time});
      all you keep is here.
    </p>
  );
}
