import { inLines } from '../../diagram/card-sheet';

/** Neither samples within a text, nor what is there for a finger to take hold of. */
const DRAWN = 'svg:not(p svg) *:not(.drag-handle, .drag-handle *)';
/** How many pixels of a picture one of the screen becomes. */
const SCALE = 3;
/** Of what is written under the drawing, px of the screen. */
const TEXT = 16;
const LINE = 22;
const EDGE = 12;

/**
 * The drawings within an element as they stand on the screen, in its colours, with words under them,
 * as a PNG. They are drawn one shape after the other: the page may load no picture that it made.
 *
 * @param from names the element, as CSS does
 * @returns null where the browser gives no canvas, or there is nothing to draw
 */
export function drawnPicture(
  from: string,
  words: readonly string[],
): Uint8Array<ArrayBuffer> | null {
  const holder = document.querySelector(from);
  const canvas = document.createElement('canvas');
  const ctx = canvas.getContext('2d');
  if (!holder || !ctx) return null;
  const { left, top, width, height } = holder.getBoundingClientRect();
  const { color, backgroundColor, fontFamily } = getComputedStyle(document.documentElement);
  const font = `${TEXT}px ${fontFamily}`;
  ctx.font = font;
  const lines = words.flatMap((text) =>
    inLines(text, (line) => ctx.measureText(line).width <= width - 2 * EDGE),
  );
  canvas.width = Math.ceil(width * SCALE);
  canvas.height = Math.ceil((height + (lines.length > 0 ? lines.length * LINE + EDGE : 0)) * SCALE);
  ctx.scale(SCALE, SCALE);
  ctx.fillStyle = backgroundColor;
  ctx.fillRect(0, 0, canvas.width, canvas.height);
  ctx.fillStyle = color;
  ctx.font = font;
  lines.forEach((line, at) => {
    ctx.fillText(line, EDGE, height + (at + 0.8) * LINE);
  });
  for (const shape of holder.querySelectorAll<SVGGraphicsElement>(DRAWN)) {
    const matrix = shape.getScreenCTM?.();
    // What is not shown, or stands there to be used elsewhere, has no place on the screen.
    if (!matrix || shape.getClientRects().length === 0) continue;
    const { a, b, c, d, e, f } = matrix;
    ctx.setTransform(new DOMMatrix([a, b, c, d, e - left, f - top].map((part) => part * SCALE)));
    drawShape(ctx, shape);
  }
  const [, base64 = ''] = canvas.toDataURL('image/png').split(',');
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}

function drawShape(ctx: CanvasRenderingContext2D, shape: SVGGraphicsElement): void {
  const style = getComputedStyle(shape);
  if (style.visibility !== 'visible') return;
  ctx.save();
  clip(ctx, shape);
  const share = opacityOf(shape);
  const outline = outlineOf(shape);
  // What stands in a part of a text is drawn with that part.
  const own = [...shape.childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE);
  const text = own.map(({ nodeValue }) => nodeValue).join('');
  if (shape instanceof SVGTextContentElement && text) {
    const { x, y } = shape.getStartPositionOfChar(0);
    ctx.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    // A halo lies behind its letters.
    for (const paint of ['stroke', 'fill'] as const) {
      if (wear(ctx, style, paint, share)) ctx[`${paint}Text`](text, x, y);
    }
  } else if (outline) {
    shade(ctx, shape, style, outline);
    for (const paint of ['fill', 'stroke'] as const) {
      if (wear(ctx, style, paint, share)) ctx[paint](outline);
    }
  }
  ctx.restore();
}

/** Takes a shape's fill or stroke; false where it has no plain one. */
function wear(
  ctx: CanvasRenderingContext2D,
  style: CSSStyleDeclaration,
  paint: 'fill' | 'stroke',
  share: number,
): boolean {
  ctx.globalAlpha = share * Number(style[`${paint}Opacity`]);
  ctx[`${paint}Style`] = style[paint];
  ctx.lineWidth = Number.parseFloat(style.strokeWidth);
  ctx.setLineDash(style.strokeDasharray.match(/[\d.]+/g)?.map(Number) ?? []);
  ctx.lineCap = style.strokeLinecap as CanvasLineCap;
  ctx.lineJoin = style.strokeLinejoin as CanvasLineJoin;
  return style[paint] !== 'none' && !style[paint].startsWith('url');
}

/** Fills a shape from left to right as its gradient says; its stops have one colour. */
function shade(
  ctx: CanvasRenderingContext2D,
  shape: SVGGraphicsElement,
  { fill }: CSSStyleDeclaration,
  outline: Path2D,
): void {
  const id = /^url\("(#.*)"\)/.exec(fill)?.[1];
  if (!id) return;
  const { x, width } = shape.getBBox();
  const gradient = ctx.createLinearGradient(x, 0, x + width, 0);
  for (const stop of document.querySelectorAll<SVGStopElement>(`${id} stop`)) {
    const { stopColor, stopOpacity } = getComputedStyle(stop);
    gradient.addColorStop(
      stop.offset.baseVal,
      stopColor.replace('rgb(', 'rgba(').replace(')', `, ${stopOpacity})`),
    );
  }
  ctx.globalAlpha = opacityOf(shape);
  ctx.fillStyle = gradient;
  ctx.fill(outline);
}

function opacityOf(element: Element): number {
  let share = 1;
  for (let one: Element | null = element; one && one.tagName !== 'svg'; one = one.parentElement) {
    share *= Number(getComputedStyle(one).opacity);
  }
  return share;
}

function clip(ctx: CanvasRenderingContext2D, shape: Element): void {
  const id = shape.closest('[clip-path]')?.getAttribute('clip-path')?.slice(5, -1);
  const within = id && document.getElementById(id)?.firstElementChild;
  const outline = within && outlineOf(within);
  if (outline) ctx.clip(outline);
}

/** A shape as a path; null where it has none. */
function outlineOf(shape: Element): Path2D | null {
  const { tagName } = shape;
  const at = (name: string) => Number.parseFloat(shape.getAttribute(name) ?? '0');
  if (tagName === 'circle' || tagName === 'rect') {
    const path = new Path2D();
    if (tagName === 'circle') path.arc(at('cx'), at('cy'), at('r'), 0, 2 * Math.PI);
    else path.roundRect(at('x'), at('y'), at('width'), at('height'), at('rx'));
    return path;
  }
  const d = {
    path: shape.getAttribute('d'),
    line: `M${at('x1')} ${at('y1')}L${at('x2')} ${at('y2')}`,
    polygon: `M${shape.getAttribute('points')}z`,
  }[tagName];
  return d ? new Path2D(d) : null;
}
