import type { Page } from 'playwright-core';

/** A paint as computed, and how much of it there is once every opacity is counted. */
export interface Paint {
  readonly css: string;
  readonly alpha: number;
}

/** Something drawn on the page, and what lies behind it where it was looked at. */
export interface DrawnMark {
  readonly name: string;
  readonly isText: boolean;
  readonly fill: Paint;
  readonly stroke: Paint;
  /** The page's own colour there, and the areas drawn over it before this mark, place by place. */
  readonly page: string;
  readonly under: readonly (readonly Paint[])[];
}

/**
 * Surfaces that things are drawn on rather than drawn: what shows where they end is a line of its
 * own, or a figure in each. */
const SURFACES = '.table-rail, .board-bed, .trial-bed, .chance-cell rect';

/** Where along a line it is looked at. */
const SHARES = [0.1, 0.3, 0.5, 0.7, 0.9];

/** Marks that lie where chance puts them, at times on one another: a heap shows as one. */
const HEAPS = '.fan-spread';

/** What is out of force, and greyed. */
const GREYED = '.is-stale, .is-old';

/** Everything that is drawn on the page and in force. */
export async function drawnMarks(page: Page): Promise<DrawnMark[]> {
  return page.evaluate(
    ({ surfaces, heaps, greyed, shares }) => {
      type Mark = SVGGeometryElement | SVGTextContentElement;
      /** Looked up once for each mark, which lies under many others. */
      const once = <T>(look: (mark: Mark) => T) => {
        const known = new Map<Mark, T>();
        return (mark: Mark): T => {
          if (!known.has(mark)) known.set(mark, look(mark));
          return known.get(mark) as T;
        };
      };
      const upFrom = function* (element: Element) {
        for (let at: Element | null = element; at; at = at.parentElement)
          yield getComputedStyle(at);
      };
      const opacityOf = (mark: Element) =>
        [...upFrom(mark)].reduce((share, { opacity }) => share * Number(opacity), 1);
      const pageBehind = (mark: Element) =>
        [...upFrom(mark)].find(({ backgroundColor }) => /^rgb\(/.test(backgroundColor))
          ?.backgroundColor ?? 'rgb(255, 255, 255)';
      const paintsOf = once((mark) => {
        const { fill, fillOpacity, stroke, strokeOpacity } = getComputedStyle(mark);
        const share = opacityOf(mark);
        return {
          fill: { css: fill, alpha: Number(fillOpacity) * share },
          stroke: { css: stroke, alpha: Number(strokeOpacity) * share },
        };
      });
      const toOwn = once((mark) => mark.getScreenCTM()?.inverse() ?? null);
      /** Along a line, or the middle of a text; on the screen. */
      const placesOf = (mark: Mark) => {
        const matrix = mark.getScreenCTM() ?? new DOMMatrix();
        if (mark instanceof SVGGeometryElement) {
          const lengthPx = mark.getTotalLength();
          return shares.map((share) =>
            mark.getPointAtLength(lengthPx * share).matrixTransform(matrix),
          );
        }
        const { x, y, width, height } = mark.getBBox();
        return [new DOMPoint(x + width / 2, y + height / 2).matrixTransform(matrix)];
      };
      const covers = (mark: Mark, at: DOMPoint) => {
        const matrix = toOwn(mark);
        return (
          mark instanceof SVGGeometryElement &&
          matrix !== null &&
          mark.isPointInFill(at.matrixTransform(matrix))
        );
      };
      const told = (mark: Mark, drawnBefore: readonly Mark[]) => {
        const heap = mark.closest(heaps);
        const earlier = drawnBefore.filter((one) => !heap?.contains(one));
        const behind = (at: DOMPoint) =>
          earlier.filter((one) => covers(one, at)).map((one) => paintsOf(one).fill);
        return {
          name: `${mark.closest('svg')?.parentElement?.className} ${mark.outerHTML.slice(0, 90)}`,
          isText: mark instanceof SVGTextContentElement,
          ...paintsOf(mark),
          page: pageBehind(mark),
          under: placesOf(mark).map(behind),
        };
      };
      return [...document.querySelectorAll('svg')]
        .filter((svg) => svg.checkVisibility())
        .flatMap((svg) => {
          const shapes = 'line, path, circle, rect, polyline, text';
          const all = [...svg.querySelectorAll<Mark>(shapes)].filter(
            (mark) => !mark.closest('clipPath'),
          );
          return all.flatMap((mark, place) =>
            mark.closest(`${surfaces}, ${greyed}`) ? [] : [told(mark, all.slice(0, place))],
          );
        });
    },
    { surfaces: SURFACES, heaps: HEAPS, greyed: GREYED, shares: SHARES },
  );
}
