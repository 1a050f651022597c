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
const SURFACES = '.card-paper, .table-rail, .board-bed, .trial-bed, .chance-cell rect';

/** Where along a line it is looked at. */
const SHARES = [0.1, 0.3, 0.5, 0.7, 0.9];

/** Marks that lie where chance puts them, at times on one another: a heap shows as one. */
const HEAPS = '.fan-spread';

/** What is out of force, and greyed. */
const GREYED = '.is-stale, .is-old';

/** Shapes and texts of a drawing. */
const SHAPES = 'line, path, circle, rect, polyline, text';

const LOOKED_FOR = { surfaces: SURFACES, heaps: HEAPS, greyed: GREYED, shapes: SHAPES };

/** Looks at everything that is drawn on the page and in force, in each of the themes given. */
export type LookAtDrawings = (themes: readonly string[]) => Promise<(readonly DrawnMark[])[]>;

/**
 * What lies over what is found out once, until something else is drawn: of colours the paints alone
 * hang. A look leaves the page in the last of its themes.
 */
export function lookAtDrawings(page: Page): LookAtDrawings {
  let known: PlacedDrawings | undefined;
  return async (themes) => {
    let painted = await paintedMarks(page, themes);
    while (known?.drawn !== painted.drawn) {
      known = await placedMarks(page);
      // It may have been drawn anew in between.
      if (known.drawn !== painted.drawn) painted = await paintedMarks(page, themes);
    }
    const { places } = known;
    return painted.paintsIn.map((paints) => places.map((mark) => drawnMark(mark, paints)));
  };
}

function drawnMark({ at, under, ...told }: PlacedMark, paints: readonly Painted[]): DrawnMark {
  const { fill, stroke, behind } = paintsAt(paints, at);
  const areas = under.map((earlier) => earlier.map((one) => paintsAt(paints, one).fill));
  return { ...told, fill, stroke, page: behind, under: areas };
}

/** How a mark is painted, and the page's own colour behind it. */
interface Painted {
  readonly fill: Paint;
  readonly stroke: Paint;
  readonly behind: string;
}

function paintsAt(paints: readonly Painted[], at: number): Painted {
  const found = paints[at];
  if (!found) throw new Error('a mark is placed that is not painted');
  return found;
}

/** How all marks are painted in each theme, and what is drawn: where that is the same, all lies as it lay. */
async function paintedMarks(
  page: Page,
  themes: readonly string[],
): Promise<{ drawn: string; paintsIn: Painted[][] }> {
  const found = await page.evaluate(
    ({ names, greyed, shapes }) => {
      /** Looked up once for each element, which has many marks in it. */
      const once = <T>(look: (element: Element) => T) => {
        const known = new Map<Element, T>();
        return (element: Element): T => {
          const found = known.has(element) ? (known.get(element) as T) : look(element);
          known.set(element, found);
          return found;
        };
      };
      const drawings = [...document.querySelectorAll('svg')].filter((svg) => svg.checkVisibility());
      const marks = drawings.flatMap((svg) => [...svg.querySelectorAll(shapes)]);
      const paintsIn = names.map((name) => {
        document.documentElement.dataset.theme = name;
        const opacityOf = once((element): number => {
          const { parentElement } = element;
          const own = Number(getComputedStyle(element).opacity);
          return parentElement ? own * opacityOf(parentElement) : own;
        });
        const pageBehind = once((element): string => {
          const { parentElement } = element;
          const { backgroundColor } = getComputedStyle(element);
          if (/^rgb\(/.test(backgroundColor)) return backgroundColor;
          return parentElement ? pageBehind(parentElement) : 'rgb(255, 255, 255)';
        });
        return marks.map((mark) => {
          const { fill, fillOpacity, stroke, strokeOpacity } = getComputedStyle(mark);
          const share = opacityOf(mark);
          return {
            fill: { css: fill, alpha: Number(fillOpacity) * share },
            stroke: { css: stroke, alpha: Number(strokeOpacity) * share },
            behind: pageBehind(mark),
          };
        });
      });
      const drawn = drawings.map((svg) => `${svg.closest(greyed) !== null} ${svg.outerHTML}`);
      // As one text: a driver takes objects to pieces.
      return JSON.stringify({ drawn: drawn.join(), paintsIn });
    },
    { ...LOOKED_FOR, names: themes },
  );
  return JSON.parse(found);
}

/** A mark in force, and what lies behind it: marks by their places among all of the page. */
interface PlacedMark {
  readonly at: number;
  readonly name: string;
  readonly isText: boolean;
  readonly under: readonly (readonly number[])[];
}

/** All marks in force, and what is drawn. */
interface PlacedDrawings {
  readonly drawn: string;
  readonly places: readonly PlacedMark[];
}

async function placedMarks(page: Page): Promise<PlacedDrawings> {
  return page.evaluate(
    ({ surfaces, heaps, greyed, shapes, shares }) => {
      type Mark = SVGGeometryElement | SVGTextContentElement;
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
      const told = (mark: Mark, at: number, earlier: readonly Placed[]) => {
        const heap = mark.closest(heaps);
        const places = placesOf(mark);
        const behind = earlier.filter((one) => !heap?.contains(one.mark));
        return {
          at,
          name: `${mark.closest('svg')?.parentElement?.className} ${mark.outerHTML.slice(0, 90)}`,
          isText: mark instanceof SVGTextContentElement,
          under: places.map((place) =>
            behind.filter(({ covers }) => covers(place)).map((one) => one.at),
          ),
        };
      };
      interface Placed {
        readonly mark: Mark;
        readonly at: number;
        covers(place: DOMPoint): boolean;
      }
      const placed = (mark: Mark, at: number): Placed => {
        // Asked for once: the mark lies under many others.
        const toOwn = mark.getScreenCTM()?.inverse();
        return {
          mark,
          at,
          covers: (place) =>
            mark instanceof SVGGeometryElement &&
            toOwn !== undefined &&
            mark.isPointInFill(place.matrixTransform(toOwn)),
        };
      };
      let before = 0;
      const drawings = [...document.querySelectorAll('svg')].filter((svg) => svg.checkVisibility());
      const drawn = drawings.map((svg) => `${svg.closest(greyed) !== null} ${svg.outerHTML}`);
      const places = drawings.flatMap((svg) => {
        const all = [...svg.querySelectorAll<Mark>(shapes)].map((mark, i) =>
          placed(mark, before + i),
        );
        before += all.length;
        const shown = all.filter(({ mark }) => !mark.closest('clipPath'));
        return shown.flatMap(({ mark, at }, place) =>
          mark.closest(`${surfaces}, ${greyed}`) ? [] : [told(mark, at, shown.slice(0, place))],
        );
      });
      return { drawn: drawn.join(), places };
    },
    { ...LOOKED_FOR, shares: SHARES },
  );
}
