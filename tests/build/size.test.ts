import { expect, it } from 'vitest';
import { textOf } from './dist';
import { firstScripts, gzippedCodeBytes, scriptsWith, shippedCode } from './shipped-code';

/**
 * Shot, Kit, the room for error and the offline shell took 66 kB; the engine beside the page, for
 * fits and sweeps, 27; measuring, its readings and their backups 35; the table and its ways 30;
 * trusted types and the ways to repair the app 2; drawings told in words and help with installing 2;
 * storage that loses nothing, and says so, 5; ways told apart by what sets them apart 1.5; saying what
 * a ball touches, what stops it and which pockets are out of reach, 2; tabs that join their changes,
 * files held to their digests, and lists of thousands, 6; cushions as quantities of a table, 2; laws that change said once, and faster paths, 10;
 * players of one’s own, with their question, log and file, and what of it sets ways apart, 7;
 * the place Log, the sheet after a shot and the level test 7.5; cushions followed from every top 0.8;
 * the question asked on Shot, and sides of the pocket in the log, 0.8; the cue drawn on its line, dragged
 * and named, how sure the aim is, and the tip told in tips, 8; every pocket's chance told at the pocket,
 * comparisons that begin by themselves, words that keep off one another and pictures of positions 2.8;
 * a kit by what a player can see, its drawings, and what a trial did to the aim 6.5; drawings whose parts
 * follow a finger without being drawn anew 1.4;
 * ways of every kind on screen, with their drawings, the cue as laid and a voice, 7.5; shots, positions and
 * kits as links, opened as hostile, 6.3, and as codes 2.1, which is what draws them; what a finger drags
 * told off the finger, and a wide screen's Kit beside what is open of it, 1.8; a kit or a position on a
 * card of paper 5.4, drawings as pictures 1.8, and the coach’s view 0.7;
 * practice 9: what limits most and the shots of ladders in the engine 1.6, ladders and ways kept 2.7, their
 * screens 4.2, what is read of it at a start 0.5. Minifying twice, and one script for all that comes late, took
 * 6 away; what a way is worth, and safeties, in the engine 4.3; cues raised for what level ones cannot do, and
 * notes of the last answers, 0.6; what ways are worth on screen, with safeties and what a tilted bed does,
 * 2.6; rows of the log drawn, a shot drawn where it is asked about, a card over all of its paper, and room too
 * small for figures told in words, 0.5; kept ways known as kept, drawn as they go, with their diamonds and their
 * card, and what a line strays over a table length, 1; ways of every kind in links, and a rung of practice on a
 * card, 1.6; ways told so that a newcomer can follow, with their luck and their words explained, 1.9; the last
 * screen shown first, and taken over, 2.6.
 */
const BUDGET_BYTES = 272_500;

/**
 * What must have come, and been read, before the first answer of a first visit; the way to repair the
 * app with it. A start that shows the last screen waits for 2.4 kB of it.
 */
const FIRST_BUDGET_BYTES = 81_900;

it('sends no more scripts and styles than that, gzipped, the service worker among them', () => {
  expect(shippedCode).toContain('sw.js');
  expect(shippedCode.length).toBeGreaterThan(1);
  expect(gzippedCodeBytes()).toBeLessThanOrEqual(BUDGET_BYTES);
});

it('has the first answer on screen with at most 82 kB of scripts, gzipped', () => {
  const scripts = firstScripts();
  expect(scripts.length).toBeGreaterThan(2);
  expect(shippedCode).toEqual(expect.arrayContaining([...scripts]));
  expect(gzippedCodeBytes(scripts)).toBeLessThanOrEqual(FIRST_BUDGET_BYTES);
});

it('starts the app’s way out without any script of the app itself', () => {
  const rescue = firstScripts().find((script) => /\brescue-/.test(script)) ?? '';
  expect(
    scriptsWith(rescue).filter((script) => /\b(first|index|engine|late)-/.test(script)),
  ).toEqual([]);
  expect(scriptsWith(rescue).length).toBeGreaterThan(0);
});

it('sends the engine once: what its workers share with the page lies in scripts of both', () => {
  const worker = shippedCode.find((script) => /\bengine-worker-/.test(script)) ?? '';
  const shared = scriptsWith(worker).filter((script) => script !== worker);
  expect(firstScripts().filter((script) => shared.includes(script))).toHaveLength(1);
  // Only the engine says this, where an aim is asked for.
  const solving = shippedCode.filter((script) => textOf(script).includes('no-convergence'));
  expect(solving.filter((script) => /\bengine/.test(script))).toHaveLength(1);
});
