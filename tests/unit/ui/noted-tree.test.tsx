import { describe, expect, it } from 'vitest';
import { isNotedTree, type NotedTree, standingOf, treeOf } from '../../../src/ui/noted-tree';

const asItStands = () => ({});

function made(build: (holder: HTMLElement) => void): HTMLElement {
  const holder = document.createElement('div');
  build(holder);
  return holder;
}

function drawing(): HTMLElement {
  return made((holder) => {
    holder.className = 'shooter-diagram';
    const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    svg.setAttribute('viewBox', '0 0 10 10');
    const defs = document.createElementNS('http://www.w3.org/2000/svg', 'defs');
    defs.append(document.createElementNS('http://www.w3.org/2000/svg', 'linearGradient'));
    svg.append(defs);
    const grip = document.createElement('div');
    grip.style.setProperty('left', '92.5px');
    grip.style.setProperty('top', '-3px');
    const button = document.createElement('button');
    button.setAttribute('aria-label', 'Undo');
    // Words part by part, one of them empty: who takes them over finds as many.
    button.append('a', '', 'b < c');
    holder.append(svg, grip, button);
  });
}

describe('what stands on the page, noted', () => {
  it('stands again as it stood, drawings among it and words part by part', () => {
    const before = drawing();
    const tree = treeOf(before, asItStands);
    expect(isNotedTree(tree)).toBe(true);
    const read: NotedTree = JSON.parse(JSON.stringify(tree));
    const after = standingOf(read, document);
    expect(after.isEqualNode(before)).toBe(true);
    const names = (node: Node): string[] => [
      node instanceof Element ? `${node.namespaceURI} ${node.localName}` : `${node.nodeValue}`,
      ...[...node.childNodes].flatMap(names),
    ];
    expect(names(after)).toEqual(names(before));
    expect(names(after).filter((name) => name.endsWith('svg linearGradient'))).toHaveLength(1);
  });

  it('is amended as asked, and what is to be left out is', () => {
    const tree = treeOf(drawing(), (element) => {
      if (element.localName === 'svg') return null;
      return element.localName === 'button' ? { disabled: '' } : {};
    });
    const after = tree && standingOf(tree, document);
    const holder = made((one) => after && one.append(after));
    expect(holder.querySelector('svg')).toBeNull();
    expect(holder.querySelector('button')?.hasAttribute('disabled')).toBe(true);
  });
});

describe('what is noted by somebody else', () => {
  const inside = (one: unknown) => ['div', {}, [['p', {}, ['words', one]]]];

  it('is taken where it is made of what the first screen is made of', () => {
    expect(isNotedTree(inside(['a', { href: '#kit', 'aria-current': 'page' }, ['Kit']]))).toBe(
      true,
    );
    expect(isNotedTree(inside(['div', { style: 'left: 1px; top: 2.5px;' }, []]))).toBe(true);
  });

  it.each([
    ['a script', ['script', {}, ['alert(1)']]],
    ['a script of a drawing', ['svg', {}, [['script', { href: 'x.js' }, []]]]],
    ['a frame', ['iframe', { srcdoc: '<p>' }, []]],
    ['a picture', ['img', { src: 'https://example.org/' }, []]],
    ['a form', ['form', { action: '#shot' }, []]],
    ['a style sheet', ['style', {}, ['* { display: none }']]],
    ['markup of another kind', ['foreignObject', {}, []]],
    ['a tag in capitals', ['SCRIPT', {}, []]],
    ['what runs as it is tapped', ['button', { onclick: 'alert(1)' }, []]],
    ['what runs as it loads', ['svg', { onload: 'alert(1)' }, []]],
    ['a script as an address', ['a', { href: 'javascript:alert(1)' }, []]],
    ['an address elsewhere', ['a', { href: 'https://example.org/' }, []]],
    ['an address with more than a place', ['a', { href: '#kit/link/AAAA' }, []]],
    ['an address within the drawing', ['path', { 'xlink:href': '#a' }, []]],
    ['a style that fetches', ['div', { style: 'background: url(https://example.org/)' }, []]],
    ['a style with more than a place', ['div', { style: 'left: 1px; position: fixed;' }, []]],
    ['an attribute of no text', ['div', { id: 1 }, []]],
    ['no attributes', ['div', null, []]],
    ['nothing inside', ['div', {}]],
    ['a number', 5],
    ['nothing', null],
    ['a name that every object has', ['constructor', {}, []]],
    ['an attribute that every object has', ['div', { constructor: 'x' }, []]],
  ])('is refused as a whole for %s', (_, one) => {
    expect(isNotedTree(inside(one))).toBe(false);
  });
});
