import { keepStamped, recallStamped, type StampOf, stampBy } from '../state/stamped-text';
import type { NotedText } from '../store/noted-text';
import { isNotedTree, type NotedTree, standingOf, treeOf } from './noted-tree';

/** Where the screen that a start shows first is noted. */
export const SCREEN_KEY = 'leeway.screen';

/** The screen, and what the page's root says of theme and hand. */
interface Screen {
  readonly theme: string;
  readonly hand: string;
  readonly tree: NotedTree;
}

/** What comes once the first frame is out: a start has its room, and not yet itself. */
const LATE = '.run-row, .answer-others';
/** What nothing has been done yet to take back at a start. */
const NOT_YET = '[aria-label="Undo"], [aria-label="Redo"]';
/** What is told or opened for a moment only, or tells of what is not sure to be so at the next start. */
const PASSING =
  '.is-stale, .news-bar output:not(:empty), .part-line:not(:empty), .fresh-start, details[open], [data-named]';

/** Whether the page is to show Shot with nothing open. */
function isAtShot(): boolean {
  return ['', '#', '#shot'].includes(location.hash);
}

/** By all scripts and styles of the page: another build has others. */
function stampOf(): StampOf {
  const own = document.querySelectorAll('script[src], link[as="script"], link[rel="stylesheet"]');
  return stampBy(
    [...own].map((one) => one.getAttribute('src') ?? one.getAttribute('href')).join(' '),
  );
}

/** What a drawing's size and the figures' look hang on; colours are the style sheet's, whatever is noted. */
function seenOn(): readonly string[] {
  const { fontSize } = getComputedStyle(document.documentElement);
  return [`${innerWidth} ${innerHeight}`, fontSize, navigator.language];
}

/**
 * Puts the screen noted last into the holder, where it was noted by this build for this window.
 *
 * @returns whether it stands there
 */
export function showNotedScreen(note: NotedText, holder: HTMLElement): boolean {
  const text = isAtShot() ? recallStamped(note, stampOf(), seenOn()) : null;
  const screen = text === null ? null : readScreen(text);
  if (screen === null) return false;
  document.documentElement.dataset.theme = screen.theme;
  document.documentElement.dataset.hand = screen.hand;
  // Until the app takes it over, which `rescue` looks for.
  holder.dataset.noted = '';
  holder.append(standingOf(screen.tree, document));
  return true;
}

function readScreen(text: string): Screen | null {
  try {
    const { theme, hand, tree } = JSON.parse(text);
    const isWorn = [theme, hand].every((word) => /^[a-z]+$/.test(word));
    return isWorn && isNotedTree(tree) ? { theme, hand, tree } : null;
  } catch {
    return null;
  }
}

/** Notes the screen that stands in the holder, where a start would show the same. */
export function keepScreen(note: NotedText, holder: HTMLElement): void {
  const [app] = holder.children;
  if (!app || !isAtShot()) return;
  if (!app.querySelector('.shot-place:not(.is-open, .is-explained) .answer-figures')) return;
  if (app.querySelector(PASSING)) return;
  const tree = treeOf(app, (element) => {
    if (element.matches(LATE)) return null;
    return element.matches(NOT_YET) ? { disabled: '' } : {};
  });
  if (!isNotedTree(tree)) return;
  const { theme = '', hand = '' } = document.documentElement.dataset;
  keepStamped(note, stampOf(), JSON.stringify({ theme, hand, tree }), seenOn());
}
