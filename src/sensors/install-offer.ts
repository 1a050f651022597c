/** What some browsers announce once a page can be installed. */
interface OfferEvent extends Event {
  prompt(): Promise<unknown>;
}

/** The browser's own way to install the page, where it gives one. */
export interface InstallOffer {
  /** Whether the browser will ask when told to. */
  readonly isThere: boolean;
  /** Has the browser ask, once. Call it within a tap. Never rejects. */
  ask(): Promise<void>;
}

/**
 * Keeps the browser's offer for when the person wants it; by itself nothing is ever asked.
 *
 * @param onChange called whenever the offer comes or goes
 * @param onInstalled called once the page has been installed
 */
export function watchInstallOffer(
  page: EventTarget,
  onChange: () => void,
  onInstalled: () => void,
): InstallOffer {
  let kept: OfferEvent | null = null;
  const set = (offer: OfferEvent | null) => {
    kept = offer;
    onChange();
  };
  page.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    set(event as OfferEvent);
  });
  page.addEventListener('appinstalled', () => {
    set(null);
    onInstalled();
  });
  return {
    get isThere() {
      return kept !== null;
    },
    async ask() {
      const offer = kept;
      set(null);
      try {
        await offer?.prompt();
      } catch {
        // Refused, or asked already: the menu's words are there still.
      }
    },
  };
}
