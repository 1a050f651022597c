import { expect, it } from 'vitest';
import type { ShotWarning } from '../../../src/state/shot-warnings';
import { warningWords } from '../../../src/ui/shot/warning-words';

it.each<[ShotWarning, string]>([
  [{ kind: 'near-miscue', contact: 0.48 }, 'miscue'],
  [{ kind: 'thin-cut' }, 'fuller cut'],
  [{ kind: 'raised-cue' }, 'ask the room’s owner first'],
  [{ kind: 'speed-sensitive', changeM: 0.0062, changeRad: 0.0052 }, '6 mm (0.3°)'],
  [{ kind: 'speed-edge', towards: 'firmer' }, 'firmer'],
  [{ kind: 'swerve-leads' }, 'Swerve outweighs squirt'],
])('%o has a line of its own', (warning, words) => {
  expect(warningWords(warning, 'mm')).toContain(words);
});
