import type { ComponentChildren } from 'preact';
import { useErrorBoundary } from 'preact/hooks';
import type { AppModels } from './app-models';

/** Never a blank screen: where something cannot be shown, what is kept can still be saved. */
export function WhenBroken({ app, children }: { app: AppModels; children: ComponentChildren }) {
  const [error] = useErrorBoundary();
  if (error === undefined) return <>{children}</>;
  return (
    <main>
      <p class="place-problem">This cannot be shown. What you kept is still here.</p>
      <button type="button" class="button button-main" onClick={() => void app.backup.out.save()}>
        Save a backup
      </button>
    </main>
  );
}
