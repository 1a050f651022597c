/** What stands on the page, as plain data: words, or an element with its attributes and what is in it. */
export type NotedTree =
  | string
  | readonly [tag: string, attributes: Attributes, inside: readonly NotedTree[]];

type Attributes = Readonly<Record<string, string>>;

const SVG = 'http://www.w3.org/2000/svg';
const DRAWN =
  'svg g line circle rect path polygon polyline ellipse text tspan defs linearGradient stop';
const TAGS: ReadonlySet<string> = new Set(
  `a b button details div h1 i li main nav output p section span strong summary ul ${DRAWN}`.split(
    ' ',
  ),
);
/** None of these runs anything or fetches anything. */
const ATTRIBUTES: ReadonlySet<string> = new Set(
  (
    'class role type tabindex disabled id width height viewBox x y x1 x2 y1 y2 dx dy r rx ry cx cy d ' +
    'points offset transform text-anchor overflow preserveAspectRatio data-opens data-named'
  ).split(' '),
);
const PLACE = /^(?:(?:left|top|bottom|width|height): -?[\d.]+(?:px)?;? ?)+$/;

function isHarmless(name: string, value: unknown): value is string {
  if (typeof value !== 'string') return false;
  if (name === 'href') return /^#[a-z/-]*$/.test(value);
  if (name === 'style') return PLACE.test(value);
  return ATTRIBUTES.has(name) || /^aria-[a-z]+$/.test(name);
}

/** Whether it is made of nothing but what the first screen is made of; anything may be asked about. */
export function isNotedTree(found: unknown): found is NotedTree {
  if (typeof found === 'string') return true;
  if (!Array.isArray(found)) return false;
  const [tag, attributes, inside] = found;
  if (!TAGS.has(tag) || !Array.isArray(inside)) return false;
  if (typeof attributes !== 'object' || attributes === null) return false;
  return Object.entries(attributes).every((one) => isHarmless(...one)) && inside.every(isNotedTree);
}

/** @param amend what of an element is noted otherwise than it stands; null where it is left out */
export function treeOf(
  element: Element,
  amend: (element: Element) => Attributes | null,
): NotedTree | null {
  const amended = amend(element);
  if (amended === null) return null;
  const attributes = Object.fromEntries(
    [...element.attributes].map(({ name, value }) => [name, value]),
  );
  const inside: NotedTree[] = [];
  for (const node of element.childNodes) {
    const one = node instanceof Element ? treeOf(node, amend) : node.textContent;
    if (one !== null) inside.push(one);
  }
  return [element.localName, { ...attributes, ...amended }, inside];
}

/** @param page where it is to stand; nothing of it is read as markup, and a tree asked about first is harmless */
export function standingOf(tree: NotedTree, page: Document, isDrawn = false): Node {
  if (typeof tree === 'string') return page.createTextNode(tree);
  const [tag, attributes, inside] = tree;
  const drawn = isDrawn || tag === 'svg';
  const element = drawn ? page.createElementNS(SVG, tag) : page.createElement(tag);
  for (const name in attributes) {
    const value = attributes[name] ?? '';
    if (name === 'style') place(element, value);
    else element.setAttribute(name, value);
  }
  element.append(...inside.map((one) => standingOf(one, page, drawn)));
  return element;
}

/** The page's policy takes no style attribute, but what is set one by one. */
function place(element: Element, style: string): void {
  if (!(element instanceof HTMLElement)) return;
  for (const rule of style.split(';')) {
    const [name = '', value = ''] = rule.split(':');
    if (name.trim()) element.style.setProperty(name.trim(), value.trim());
  }
}
