/** What the app can be put on a home screen with, each in its own words. */
export type Platform =
  | 'ios-safari'
  | 'ios-other'
  | 'android-firefox'
  | 'android-other'
  | 'mac-safari'
  | 'desktop-firefox'
  | 'desktop-other';

/** What is needed of a page; `window` is one. */
export interface PlatformPage {
  readonly navigator: {
    readonly userAgent: string;
    readonly maxTouchPoints: number;
    /** iOS alone has it. */
    readonly standalone?: boolean;
  };
  matchMedia(query: string): { readonly matches: boolean };
}

/** Tablets by Apple call themselves a Macintosh; no Macintosh takes two fingers. */
const FINGERS_OF_A_TABLET = 2;

/** Other browsers on iOS sign with these; a page within some other app lacks Safari's own name. */
const NOT_SAFARI_ON_IOS = /CriOS|FxiOS|EdgiOS|OPiOS|OPT\/|DuckDuckGo|GSA\//;

/** Which words about installing fit. Nothing else may hang on it: browsers disguise themselves. */
export function findPlatform({ navigator }: Pick<PlatformPage, 'navigator'>): Platform {
  const { userAgent: name, maxTouchPoints } = navigator;
  const isMac = name.includes('Macintosh');
  if (/iPhone|iPad|iPod/.test(name) || (isMac && maxTouchPoints >= FINGERS_OF_A_TABLET)) {
    const isSafari = /Safari\//.test(name) && !NOT_SAFARI_ON_IOS.test(name);
    return isSafari ? 'ios-safari' : 'ios-other';
  }
  const isFirefox = name.includes('Firefox/');
  if (name.includes('Android')) return isFirefox ? 'android-firefox' : 'android-other';
  if (isFirefox) return 'desktop-firefox';
  return isMac && !/Chrome\/|Chromium\//.test(name) ? 'mac-safari' : 'desktop-other';
}

/** Whether the page runs as an app of its own already. */
export function isInstalled(page: PlatformPage): boolean {
  const isOwnWindow = page.matchMedia(
    '(display-mode: standalone), (display-mode: fullscreen)',
  ).matches;
  return isOwnWindow || page.navigator.standalone === true;
}
