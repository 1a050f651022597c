import type { Router } from '../route';

/** The way back to what is measured for. */
export function ToShot({ router }: { router: Router }) {
  return (
    <button type="button" class="button button-main" onClick={() => router.goTo('shot')}>
      To your shot
    </button>
  );
}
