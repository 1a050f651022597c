import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { createInstallModel } from '../../../src/state/install-model';
import { type FakeInstallPage, fakeInstallPage, offerInstall } from '../sensors/fake-install-page';

function setUp(has: FakeInstallPage = {}, openedEmpty = true, kept = new Map<string, string>()) {
  const page = fakeInstallPage(has);
  const hasMeasured = signal(false);
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
  const ports = { page, hasMeasured, openedEmpty, findStorage: () => storage };
  return { page, hasMeasured, kept, model: createInstallModel(ports) };
}

describe('the hint to install', () => {
  it('comes with the first thing measured, and not before', () => {
    const { model, hasMeasured } = setUp();
    expect(model.isDue.value).toBe(false);
    hasMeasured.value = true;
    expect(model.isDue.value).toBe(true);
  });

  it('goes for good when it is not wanted', () => {
    const { model, hasMeasured, kept } = setUp();
    hasMeasured.value = true;
    model.dismiss();
    expect(model.isDue.value).toBe(false);
    const next = setUp({}, false, kept);
    next.hasMeasured.value = true;
    expect(next.model.isDue.value).toBe(false);
  });

  it('goes for this visit where nothing can be kept', () => {
    const findStorage = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    const page = fakeInstallPage();
    const ports = { page, findStorage, hasMeasured: signal(true), openedEmpty: false };
    const model = createInstallModel(ports);
    expect(model.isDue.value).toBe(true);
    model.dismiss();
    expect(model.isDue.value).toBe(false);
  });

  it('never comes in the installed app, nor once it has been installed', () => {
    const installed = setUp({ media: 'standalone' });
    installed.hasMeasured.value = true;
    expect(installed.model.isDue.value).toBe(false);
    const { model, page, hasMeasured } = setUp();
    hasMeasured.value = true;
    page.dispatchEvent(new Event('appinstalled'));
    expect(model.isInstalled.value).toBe(true);
    expect(model.isDue.value).toBe(false);
  });
});

describe('a browser that asks by itself', () => {
  it('is held back until the person wants it, and asks once', async () => {
    const { model, page } = setUp();
    expect(model.canAsk.value).toBe(false);
    const offer = offerInstall(page);
    expect(offer.isHeldBack).toBe(true);
    expect(offer.asked()).toBe(0);
    expect(model.canAsk.value).toBe(true);
    await model.ask();
    await model.ask();
    expect(offer.asked()).toBe(1);
    expect(model.canAsk.value).toBe(false);
  });

  it('may refuse, and then the menu’s words are what is left', async () => {
    const { model, page } = setUp();
    offerInstall(page, true);
    await expect(model.ask()).resolves.toBeUndefined();
    expect(model.canAsk.value).toBe(false);
  });
});

describe('a first start from the home screen', () => {
  it.each([
    ['empty, from the home screen', { standalone: true }, true, true],
    ['with something in it', { standalone: true }, false, false],
    ['in a tab', {}, true, false],
  ])('%s', (_, has, openedEmpty, expected) => {
    expect(setUp(has, openedEmpty).model.isFreshStart.value).toBe(expected);
  });

  it('is over once something is measured, or when told so', () => {
    const one = setUp({ standalone: true });
    one.hasMeasured.value = true;
    expect(one.model.isFreshStart.value).toBe(false);
    const other = setUp({ standalone: true });
    other.model.dismiss();
    expect(other.model.isFreshStart.value).toBe(false);
  });
});
