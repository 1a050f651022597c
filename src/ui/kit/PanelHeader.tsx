import type { Router } from '../route';

/** The name of a panel and the way back. */
export function PanelHeader({ router, title }: { router: Router; title: string }) {
  return (
    <header class="panel-header">
      <button type="button" class="button" onClick={() => router.close()}>
        <span aria-hidden="true">‹</span> Back
      </button>
      <h1 tabIndex={-1}>{title}</h1>
    </header>
  );
}
