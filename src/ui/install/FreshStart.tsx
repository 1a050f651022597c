import type { Models } from '../app-models';
import './Install.css';

/** On a first start from the home screen: the way to bring in what was kept elsewhere. */
export function FreshStart({ app: { install, router } }: { app: Models<'install' | 'router'> }) {
  if (!install.isFreshStart.value) return null;
  return (
    <section class="fresh-start" aria-label="First start">
      <p>Nothing of yours is here yet.</p>
      <div class="fresh-start-buttons">
        <button type="button" class="button" onClick={() => router.visit('kit', 'backup')}>
          Bring a backup in
        </button>
        <button type="button" class="button" onClick={install.dismiss}>
          Start afresh
        </button>
      </div>
    </section>
  );
}
