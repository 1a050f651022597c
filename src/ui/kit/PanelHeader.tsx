import type { ComponentChildren } from 'preact';
import type { Router } from '../route';

/** The way back to where one came from. */
export function BackButton({ router }: { router: Router }) {
  return (
    <button type="button" class="button" onClick={() => router.close()}>
      <span aria-hidden="true">‹</span> Back
    </button>
  );
}

interface Props {
  readonly router: Router;
  readonly title: string;
  /** What else can be done with it. */
  readonly children?: ComponentChildren;
}

/** The name of a panel and the way back. */
export function PanelHeader({ router, title, children }: Props) {
  return (
    <header class="panel-header">
      <BackButton router={router} />
      <h1 tabIndex={-1}>{title}</h1>
      {children}
    </header>
  );
}
