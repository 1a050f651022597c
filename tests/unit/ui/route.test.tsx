import { beforeEach, describe, expect, it } from 'vitest';
import { createRouter, parseHash, type Router } from '../../../src/ui/route';

describe('an address', () => {
  it.each([
    ['', 'shot', ''],
    ['#shot', 'shot', ''],
    ['#kit/cues/abc', 'kit', 'cues/abc'],
    ['#/kit', 'kit', ''],
    ['#nowhere/at/all', 'shot', ''],
  ])('"%s" is %s "%s"', (hash, place, panel) => {
    expect(parseHash(hash)).toEqual({ place, panel });
  });
});

describe('the router', () => {
  beforeEach(() => {
    history.replaceState(null, '', '#shot');
  });

  it('writes where one is into the address', () => {
    const router = createRouter(window);
    router.open('cut');
    expect(location.hash).toBe('#shot/cut');
    expect(router.route.value).toEqual({ place: 'shot', panel: 'cut' });
    router.goTo('kit');
    expect(location.hash).toBe('#kit');
  });

  it('adds one step back for the first panel and none for the next in its place', () => {
    const router = createRouter(window);
    const before = history.length;
    router.open('cut');
    router.open('speed');
    expect(history.length).toBe(before + 1);
    expect(router.route.value.panel).toBe('speed');
  });

  it('adds a step for a panel within the open one', () => {
    history.replaceState(null, '', '#kit');
    const router = createRouter(window);
    const before = history.length;
    router.open('cues');
    router.open('cues/abc');
    expect(history.length).toBe(before + 2);
  });

  it('closes a panel the address itself opened by staying in the app', () => {
    history.replaceState(null, '', '#shot/tip');
    const router = createRouter(window);
    const before = history.length;
    router.close();
    expect(history.length).toBe(before);
    expect(router.route.value).toEqual({ place: 'shot', panel: '' });
  });

  const atPlace = (router: Router) => expect.poll(() => router.route.value);

  it('comes back from a visit to the place it was made from, through the panels opened there', async () => {
    const router = createRouter(window);
    router.visit('kit', 'measure');
    router.open('measure/one');
    router.open('measure/two');
    router.close();
    await atPlace(router).toEqual({ place: 'kit', panel: 'measure' });
    router.close();
    await atPlace(router).toEqual({ place: 'shot', panel: '' });
  });

  it('comes back from a visit to a whole place, and says that it can', async () => {
    const router = createRouter(window);
    router.visit('kit', '');
    expect(router.isVisit.value).toBe(true);
    router.open('cues');
    expect(router.isVisit.value).toBe(false);
    router.close();
    await atPlace(router).toEqual({ place: 'kit', panel: '' });
    expect(router.isVisit.value).toBe(true);
    router.close();
    await atPlace(router).toEqual({ place: 'shot', panel: '' });
    expect(router.isVisit.value).toBe(false);
  });

  it('stays at a place that one goes to oneself', () => {
    const router = createRouter(window);
    router.goTo('kit');
    router.close();
    expect(router.isVisit.value).toBe(false);
    expect(router.route.value).toEqual({ place: 'kit', panel: '' });
  });

  it('closes a panel within another to that one', () => {
    history.replaceState(null, '', '#kit/cues/abc');
    const router = createRouter(window);
    router.close();
    expect(router.route.value).toEqual({ place: 'kit', panel: 'cues' });
    router.close();
    expect(router.route.value).toEqual({ place: 'kit', panel: '' });
  });
});
