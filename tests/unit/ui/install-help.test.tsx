import { signal } from '@preact/signals';
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { createInstallModel } from '../../../src/state/install-model';
import { FreshStart } from '../../../src/ui/install/FreshStart';
import { InstallHelp } from '../../../src/ui/install/InstallHelp';
import { apartWords, INSTALL_STEPS } from '../../../src/ui/install/install-words';
import { createRouter } from '../../../src/ui/route';
import { type FakeInstallPage, fakeInstallPage, offerInstall } from '../sensors/fake-install-page';

afterEach(cleanup);

function setUp(has: FakeInstallPage) {
  history.replaceState(null, '', '#kit/about');
  const page = fakeInstallPage(has);
  const install = createInstallModel({
    page,
    findStorage: () => null,
    hasMeasured: signal(false),
    openedEmpty: true,
  });
  return { page, app: { install, router: createRouter(window) } };
}

const IPHONE = { userAgent: 'iPhone Version/18.5 Safari/604.1', maxTouchPoints: 5 };

describe('help with installing', () => {
  it('tells an iPhone of Share, of the two stores, and has a backup saved first', () => {
    const { app } = setUp(IPHONE);
    const { container } = render(<InstallHelp app={app} />);
    expect(container.textContent).toMatch(/Share.*Add to Home Screen/);
    expect(container.textContent).toMatch(/begins empty.*seven days/);
    screen.getByRole('button', { name: 'Save a backup first' }).click();
    expect(app.router.route.value.panel).toBe('backup');
  });

  it('asks by the browser’s own question where there is one', async () => {
    const { app, page } = setUp({ userAgent: 'Android Chrome/137', maxTouchPoints: 5 });
    render(<InstallHelp app={app} />);
    expect(screen.getByText(/Install app or Add to Home screen/)).toBeTruthy();
    const offer = offerInstall(page);
    (await screen.findByRole('button', { name: 'Install it' })).click();
    expect(offer.asked()).toBe(1);
    await screen.findByText(/Install app or Add to Home screen/);
  });

  it('warns of two stores on Apple’s systems alone', () => {
    const platforms = Object.keys(INSTALL_STEPS) as (keyof typeof INSTALL_STEPS)[];
    const apart = platforms.filter((platform) => apartWords(platform) !== null);
    expect(apart.sort()).toEqual(['ios-other', 'ios-safari', 'mac-safari']);
  });
});

describe('a first start from the home screen', () => {
  it('leads to bringing a backup in, or goes away', async () => {
    const { app } = setUp({ ...IPHONE, standalone: true });
    render(<FreshStart app={app} />);
    screen.getByRole('button', { name: 'Bring a backup in' }).click();
    expect(app.router.route.value).toEqual({ place: 'kit', panel: 'backup' });
    screen.getByRole('button', { name: 'Start afresh' }).click();
    await expect.poll(() => screen.queryByRole('button')).toBeNull();
  });
});
