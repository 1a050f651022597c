import { useSignal } from '@preact/signals';
import type { PlatformNews } from './app-models';
import './NewsBar.css';

/** What the platform has to tell: a new version, and trouble with the storage. */
export function NewsBar({ news }: { news: PlatformNews }) {
  const isUpdating = useSignal(false);
  const apply = news.applyUpdate.value;
  const lines = news.storageLines.value;
  return (
    <div class="news-bar">
      <output>
        {lines.map((line) => (
          <span key={line} class="news-line">
            <span aria-hidden="true">▲</span> {line}
          </span>
        ))}
        {apply && (
          <span class="news-line">
            {isUpdating.value ? 'Updating…' : 'A newer version is ready. Nothing you kept changes.'}
            <button
              type="button"
              class="button"
              disabled={isUpdating.value}
              onClick={() => {
                isUpdating.value = true;
                apply();
              }}
            >
              Update now
            </button>
          </span>
        )}
      </output>
    </div>
  );
}
