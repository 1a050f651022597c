import type { Router } from '../route';

/** Hands the way looked at to another phone, with the position. */
export function ShareWay({ router, isOff }: { router: Router; isOff: boolean }) {
  return (
    <button
      type="button"
      class="button"
      disabled={isOff}
      onClick={() => router.visit('kit', 'share/way')}
    >
      Share
    </button>
  );
}
