import { expect, it } from 'vitest';
import { gzippedCodeBytes, shippedCode } from './shipped-code';

/**
 * Shot, Kit, the room for error and the offline shell took 66 kB; the engine beside the page, for
 * fits and sweeps, 27; measuring, its readings and their backups 35; the table and its ways 30;
 * trusted types and the ways to repair the app 2; drawings told in words and help with installing 2;
 * storage that loses nothing, and says so, 5; ways told apart by what sets them apart 1.5; saying what
 * a ball touches, what stops it and which pockets are out of reach, 2; tabs that join their changes,
 * files held to their digests, and lists of thousands, 6; cushions as quantities of a table, 2; laws that change said once, and faster paths, 10;
 * players of one’s own, with their question, log and file, and what of it sets ways apart, 7;
 * the place Log, the sheet after a shot and the level test 7.5; cushions followed from every top 0.8;
 * the cue drawn on its line, dragged and named, how sure the aim is, and the tip told in tips, 8.
 */
const BUDGET_BYTES = 215_800;

it('sends at most 215.8 kB of scripts and styles, gzipped, the service worker among them', () => {
  expect(shippedCode).toContain('sw.js');
  expect(shippedCode.length).toBeGreaterThan(1);
  expect(gzippedCodeBytes()).toBeLessThanOrEqual(BUDGET_BYTES);
});
