import { type Component, Fragment, options, type VNode } from 'preact';

/** The part of what Preact builds that is looked at: the component, where it stands, and in what. */
interface Built extends VNode {
  readonly __c?: Component | null;
  readonly __e?: Node | null;
  readonly __?: Built | null;
}

/** Preact's own hook, called before a component is drawn. */
const hooks = options as { __r?: ((vnode: Built) => void) | undefined };

/** What was drawn since the last look, by the names of components. */
export interface Drawn {
  readonly all: readonly string[];
  /**
   * Those that were drawn anew by themselves, although nothing of them changed. What stands in another
   * that was drawn is drawn with it.
   */
  readonly inVain: readonly string[];
}

/** Watches what components are drawn, until told to end. */
export function watchDrawn(): { look(): Drawn; end(): void } {
  const former = hooks.__r;
  let drawn = new Map<Component, Built>();
  let changed: Node[] = [];
  let values = new Map<HTMLInputElement, string>();
  hooks.__r = (vnode) => {
    former?.(vnode);
    if (vnode.__c) drawn.set(vnode.__c, vnode);
  };
  const observer = new MutationObserver((records) => {
    changed.push(...records.flatMap(({ target, addedNodes }) => [target, ...addedNodes]));
  });
  const all = { subtree: true, childList: true, attributes: true, characterData: true };
  observer.observe(document.body, all);

  /** What stands in a field is no part of the markup. */
  function fieldsChanged(): readonly Node[] {
    const fields = [...document.querySelectorAll('input')];
    const before = values;
    values = new Map(fields.map((field) => [field, field.value]));
    return fields.filter((field) => before.get(field) !== field.value);
  }

  return {
    look() {
      const seen = drawn;
      drawn = new Map();
      const places = [...changed, ...fieldsChanged()];
      changed = [];
      const isChanged = ({ __e: root }: Built) => places.some((node) => root?.contains(node));
      const isWithinDrawn = ({ __: parent }: Built): boolean =>
        parent ? (parent.__c ? seen.has(parent.__c) : false) || isWithinDrawn(parent) : false;
      const vnodes = [...seen.values()];
      const inVain = vnodes.filter((vnode) => !isChanged(vnode) && !isWithinDrawn(vnode));
      return { all: vnodes.map(nameOf), inVain: inVain.map(nameOf) };
    },
    end() {
      hooks.__r = former;
      observer.disconnect();
    },
  };
}

function nameOf({ type }: Built): string {
  if (type === Fragment) return 'Fragment';
  return typeof type === 'function' ? type.name : type;
}

/** Until all that was set off has been drawn. */
export const twoFrames = () =>
  new Promise<void>((resolve) => {
    requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
  });
