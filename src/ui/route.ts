import { type ReadonlySignal, signal } from '@preact/signals';

export type Place = 'shot' | 'choose' | 'kit' | 'log';

/** Where the person is: `#shot`, or `#shot/cut` with a panel of that place open. */
export interface Route {
  readonly place: Place;
  /** The rest of the address, or empty. */
  readonly panel: string;
}

export interface Router {
  readonly route: ReadonlySignal<Route>;
  /** Whether closing leads back to another place: no panel need be open then. */
  readonly isVisit: ReadonlySignal<boolean>;
  /** Goes to a place with no panel open. */
  goTo(place: Place): void;
  /**
   * Opens a panel of the present place; the back button closes it. Another panel takes the open
   * one's place, unless it lies within it: `cues/x` within `cues`.
   */
  open(panel: string): void;
  /** Goes to another place, or a panel of it; the back button returns to this one. */
  visit(place: Place, panel: string): void;
  /**
   * Closes the open panel, or ends a visit, as the back button does. A panel that the address itself
   * opened gives way to the one it lies within.
   */
  close(): void;
}

const PLACES: readonly Place[] = ['shot', 'choose', 'kit', 'log'];

/** Reads an address such as `#kit/cues`; anything unknown is Shot. */
export function parseHash(hash: string): Route {
  const [head, ...rest] = hash.replace(/^#\/?/, '').split('/');
  const place = PLACES.find((name) => name === head);
  return place ? { place, panel: rest.join('/') } : { place: 'shot', panel: '' };
}

function toHash({ place, panel }: Route): string {
  return panel === '' ? `#${place}` : `#${place}/${panel}`;
}

/** Keeps the route in the address's hash, so that reload, back and links work without a network. */
export function createRouter(page: Window): Router {
  const route = signal(parseHash(page.location.hash));
  const isVisit = signal(stateOf(page).visit === true);
  let goingBack = false;

  function read(): void {
    goingBack = false;
    isVisit.value = stateOf(page).visit === true;
    route.value = parseHash(page.location.hash);
  }
  function write(next: Route, how: 'push' | 'replace', visit = false): void {
    if (how === 'push') page.history.pushState({ opened: true, visit }, '', toHash(next));
    else page.history.replaceState(page.history.state, '', toHash(next));
    read();
  }

  page.addEventListener('popstate', read);
  page.addEventListener('hashchange', read);
  return {
    route,
    isVisit,
    goTo(place) {
      if (route.peek().place === place && route.peek().panel === '') return;
      write({ place, panel: '' }, 'push');
    },
    open(panel) {
      const { place, panel: open } = route.peek();
      const deeper = open === '' || panel.startsWith(`${open}/`);
      write({ place, panel }, deeper ? 'push' : 'replace');
    },
    visit(place, panel) {
      if (route.peek().place !== place || route.peek().panel !== panel) {
        write({ place, panel }, 'push', panel === '');
      }
    },
    close() {
      if (goingBack || (route.peek().panel === '' && !isVisit.peek())) return;
      goingBack = stateOf(page).opened === true;
      if (goingBack) return page.history.back();
      const { place, panel } = route.peek();
      write({ place, panel: panel.split('/').slice(0, -1).join('/') }, 'replace');
    },
  };
}

/** What the present entry was marked with: whether going back stays within the app, and is a way back. */
function stateOf({ history }: Window): { readonly opened?: unknown; readonly visit?: unknown } {
  return typeof history.state === 'object' && history.state !== null ? history.state : {};
}
