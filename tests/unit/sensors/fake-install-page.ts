/** What the page finds itself in; all invented but for the names browsers sign with. */
export interface FakeInstallPage {
  readonly userAgent?: string;
  readonly maxTouchPoints?: number;
  readonly standalone?: boolean;
  /** What its media queries find true. */
  readonly media?: string;
}

/** A page as far as installing goes. */
export function fakeInstallPage(has: FakeInstallPage = {}) {
  const { userAgent = '', maxTouchPoints = 0, standalone, media = 'browser' } = has;
  return Object.assign(new EventTarget(), {
    navigator: { userAgent, maxTouchPoints, ...(standalone === undefined ? {} : { standalone }) },
    matchMedia: (query: string) => ({ matches: query.includes(`display-mode: ${media}`) }),
  });
}

/** A browser's offer to install, and how often it asked. */
export function offerInstall(page: EventTarget, refuses = false) {
  const offer = new Event('beforeinstallprompt', { cancelable: true });
  let asked = 0;
  const prompt = async () => {
    asked += 1;
    if (refuses) throw new DOMException('once only', 'InvalidStateError');
  };
  page.dispatchEvent(Object.assign(offer, { prompt }));
  return { isHeldBack: offer.defaultPrevented, asked: () => asked };
}
