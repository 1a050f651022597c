import { describe, expect, it } from 'vitest';
import { findPlatform, isInstalled } from '../../../src/sensors/platform';
import { fakeInstallPage } from './fake-install-page';

// The forms in which these browsers sign, from memory; versions are arbitrary.
const IPHONE = 'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15';
const MAC = 'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15';
const SAFARI = '(KHTML, like Gecko) Version/18.5 Safari/605.1.15';
const ANDROID = 'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko)';

describe('the words about installing that fit', () => {
  it.each([
    ['ios-safari', `${IPHONE} (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1`, 5],
    ['ios-other', `${IPHONE} (KHTML, like Gecko) CriOS/137.0 Mobile/15E148 Safari/604.1`, 5],
    ['ios-other', `${IPHONE} (KHTML, like Gecko) FxiOS/139.0 Mobile/15E148 Safari/605.1.15`, 5],
    ['ios-other', `${IPHONE} (KHTML, like Gecko) Mobile/15E148`, 5],
    ['ios-safari', `${MAC} ${SAFARI}`, 5],
    ['mac-safari', `${MAC} ${SAFARI}`, 0],
    ['desktop-other', `${MAC} (KHTML, like Gecko) Chrome/137.0.0.0 Safari/537.36`, 0],
    ['android-other', `${ANDROID} Chrome/137.0.0.0 Mobile Safari/537.36`, 5],
    ['android-firefox', 'Mozilla/5.0 (Android 15; Mobile; rv:139.0) Gecko/139.0 Firefox/139.0', 5],
    [
      'desktop-firefox',
      'Mozilla/5.0 (X11; Linux x86_64; rv:139.0) Gecko/20100101 Firefox/139.0',
      0,
    ],
    ['desktop-other', 'something nobody has heard of', 0],
  ] as const)('are those of %s for "%s"', (platform, userAgent, maxTouchPoints) => {
    expect(findPlatform(fakeInstallPage({ userAgent, maxTouchPoints }))).toBe(platform);
  });
});

describe('a page', () => {
  it.each([
    ['in a tab', {}, false],
    ['in a tab on iOS', { standalone: false }, false],
    ['in a window of its own', { media: 'standalone' }, true],
    ['over the whole screen', { media: 'fullscreen' }, true],
    ['on the home screen of an older iOS', { standalone: true }, true],
  ])('%s knows whether it is installed', (_, has, expected) => {
    expect(isInstalled(fakeInstallPage(has))).toBe(expected);
  });
});
