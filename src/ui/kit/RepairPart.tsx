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
      <output class="place-problem">
        {isWorking ? 'Asking the server…' : repair.problem.value}
      </output>
    </>
  );
}
