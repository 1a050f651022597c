import { afterEach, beforeEach, expect, it } from 'vitest';
import type { NotedText } from '../../../src/store/noted-text';
import { keepScreen, showNotedScreen } from '../../../src/ui/noted-screen';

let text: string | null;
const note: NotedText = {
  get: () => text,
  set(next) {
    text = next;
    return true;
  },
};

/** Words as the first screen lays them, with nothing open. */
function screen(...more: readonly [tag: string, name: string][]): HTMLElement {
  const made = (tag: string, name: string, ...inside: (Node | string)[]) => {
    const element = document.createElement(tag);
    element.className = name;
    element.append(...inside);
    return element;
  };
  const answer = made('div', 'answer-figures', '18 mm right', ...more.map((one) => made(...one)));
  return made('div', '', made('div', 'app', made('main', 'shot-place', answer)));
}

let link: HTMLLinkElement;
beforeEach(() => {
  text = null;
  location.hash = '';
  document.documentElement.dataset.theme = 'light';
  document.documentElement.dataset.hand = 'left';
  link = document.createElement('link');
  link.rel = 'stylesheet';
  link.setAttribute('href', './style-1.css');
  document.head.append(link);
});
afterEach(() => {
  link.remove();
  location.hash = '';
});

function shown() {
  const holder = document.createElement('div');
  document.documentElement.dataset.theme = 'dark';
  return { isShown: showNotedScreen(note, holder), holder };
}

it('shows what it noted, in the theme and for the hand it was worn in', () => {
  const before = screen();
  keepScreen(note, before);
  const { isShown, holder } = shown();
  expect(isShown).toBe(true);
  expect(holder.innerHTML).toBe(before.innerHTML);
  expect(document.documentElement.dataset).toMatchObject({ theme: 'light', hand: 'left' });
});

it('leaves out what comes once the first frame is out', () => {
  keepScreen(note, screen(['ul', 'answer-others']));
  expect(shown().holder.innerHTML).toBe(screen().innerHTML);
});

it.each([
  ['by another build', () => link.setAttribute('href', './style-2.css')],
  ['for another window', () => Object.assign(window, { innerWidth: innerWidth + 1 })],
  ['for another place', () => Object.assign(location, { hash: '#kit' })],
  ['for a panel of Shot', () => Object.assign(location, { hash: '#shot/why' })],
  ['and damaged', () => Object.assign(note, { set: note.set(`${text}`.replace('18', '19')) })],
  ['by nobody', () => note.set('leeway')],
  ['as no more than that somebody writes', () => note.set('~4b1d')],
])('shows nothing that was noted %s', (_, change) => {
  keepScreen(note, screen());
  const { innerWidth } = window;
  const { set } = note;
  change();
  const { isShown, holder } = shown();
  Object.assign(window, { innerWidth });
  Object.assign(note, { set });
  expect({ isShown, inside: holder.childNodes.length }).toEqual({ isShown: false, inside: 0 });
});

it.each([
  ['greyed', ['p', 'is-stale']],
  ['offered at a first start alone', ['section', 'fresh-start']],
  ['that no first screen holds', ['iframe', '']],
] as const)('notes nothing with what is %s', (_, more) => {
  keepScreen(note, screen([...more]));
  expect(text).toBeNull();
});

it.each(['#kit', '#shot/cut'])('notes nothing at %s', (hash) => {
  location.hash = hash;
  keepScreen(note, screen());
  expect(text).toBeNull();
});
