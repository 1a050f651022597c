import { describe, expect, it } from 'vitest';
import { placeTitle } from '../../../src/ui/place-title';
import { parseHash } from '../../../src/ui/route';
import { SCREENS } from '../../harness/screens';

describe('what the window is called', () => {
  it.each([
    ['#shot', 'Shot, Leeway'],
    ['#shot/cut', 'Cut, Shot, Leeway'],
    ['#choose/ways', 'Ways, Choose, Leeway'],
    ['#kit/measure/some-attempt', 'Measure, Kit, Leeway'],
    ['#kit/cues/some-cue', 'Cue, Kit, Leeway'],
    ['#kit/no-such-panel', 'Kit, Leeway'],
  ])('%s is "%s"', (hash, title) => {
    expect(placeTitle(parseHash(hash))).toBe(title);
  });

  it('is another for every panel', () => {
    const shown = SCREENS.filter((screen) => screen.split('/').length < 3);
    const titles = shown.map((screen) => placeTitle(parseHash(`#${screen}`)));
    expect(new Set(titles).size).toBe(shown.length);
  });
});
