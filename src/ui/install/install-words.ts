import type { InstallModel } from '../../state/install-model';

type Platform = InstallModel['platform'];

const FROM_BROWSER_MENU = 'Open the browser’s menu, then Install app or Add to Home screen.';

/** How it is done where the browser does not ask by itself. */
export const INSTALL_STEPS: Readonly<Record<Platform, string>> = {
  'ios-safari':
    'Tap Share, the square with an arrow (it may be behind •••), then Add to Home Screen.',
  'ios-other':
    'Open the share menu, then Add to Home Screen. If that is not there, open this page in Safari.',
  'android-firefox': 'Open the menu, the three dots, then Add app to Home screen.',
  'android-other': FROM_BROWSER_MENU,
  'mac-safari': 'In the menu bar, choose File, then Add to Dock.',
  'desktop-firefox': 'Firefox keeps it as a bookmark, which opens without a network just as well.',
  'desktop-other': 'Choose Install in the address bar, or in the browser’s menu.',
};

/** Where the installed app keeps its own things, and what that means; null where it shares them. */
export function apartWords(platform: Platform): string | null {
  switch (platform) {
    case 'ios-safari':
    case 'ios-other':
      return 'On the home screen Leeway begins empty: it keeps its things apart from the browser’s. So save a backup here first, and bring it in there. What you keep in the browser may be deleted after seven days without a visit; on the home screen it is not.';
    case 'mac-safari':
      return 'In the Dock Leeway begins empty: it keeps its things apart from Safari’s. So save a backup here first, and bring it in there. What you keep in Safari may be deleted after seven days without a visit.';
    default:
      return null;
  }
}
