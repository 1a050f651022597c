import type { SharePort } from './share-file';

/** How long a download may take to be read from memory; some browsers begin late. */
const DOWNLOAD_MS = 60_000;

/** Finger-operated, or installed: where an installed app has no downloads, or hides them. */
const PREFERS_SHEET = '(pointer: coarse), (display-mode: standalone)';

/** The sharing of a browser's page. */
export function sharePort(page: Window & typeof globalThis = window): SharePort {
  const { navigator, document, URL } = page;
  // Older browsers have neither, or share no files.
  const hasSheet = 'share' in navigator && 'canShare' in navigator;
  // Installed on iOS, where display-mode came late.
  const isStandalone = 'standalone' in navigator && navigator.standalone === true;
  return {
    prefersSheet: hasSheet && (isStandalone || page.matchMedia(PREFERS_SHEET).matches),
    canShare: (files) => navigator.canShare({ files }),
    share: (files) => navigator.share({ files }),
    download: (file) => {
      const url = URL.createObjectURL(file);
      const link = document.createElement('a');
      link.href = url;
      link.download = file.name;
      link.click();
      page.setTimeout(() => URL.revokeObjectURL(url), DOWNLOAD_MS);
    },
  };
}
