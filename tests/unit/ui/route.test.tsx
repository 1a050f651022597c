import { beforeEach, describe, expect, it } from 'vitest';
import { createRouter, parseHash } from '../../../src/ui/route';

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

  it('closes a panel within another to that one', () => {
    history.replaceState(null, '', '#kit/cues/abc');
    const router = createRouter(window);
    router.close();
    expect(router.route.value).toEqual({ place: 'kit', panel: 'cues' });
    router.close();
    expect(router.route.value).toEqual({ place: 'kit', panel: '' });
  });
});
