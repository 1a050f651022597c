import { inflateSync } from 'node:zlib';

/** A printed page. */
export interface PdfPage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** All that can be read on it, without its spaces, in the order in which it was printed. */
  readonly text: string;
}

const MM_PER_POINT = 25.4 / 72;

/**
 * Reads what Chromium prints, by the format's own specification (ISO 32000-1: 7.3 objects, 7.7.3 pages,
 * 9.4 text, 9.10.3 ToUnicode): plain objects, streams deflated or not, fonts of two bytes a glyph.
 */
export function readPdf(bytes: Buffer): readonly PdfPage[] {
  const objects = new Map(
    [...bytes.toString('latin1').matchAll(/(?<=^|\n)(\d+) 0 obj\s(.*?)endobj/gs)].map(
      ([, number = '', body = '']) => [number, body] as const,
    ),
  );
  const bodyOf = (number: string | undefined) => objects.get(number ?? '') ?? '';
  const root = [...objects.values()].find((body) => /\/Type \/Pages\b/.test(body)) ?? '';
  const kids = /\/Kids \[(.*?)\]/s.exec(root)?.[1] ?? '';
  return [...kids.matchAll(/(\d+) 0 R/g)].map(([, kid]) => {
    const page = bodyOf(kid);
    const [left = 0, bottom = 0, right = 0, top = 0] = (
      /\/MediaBox \[(.*?)\]/.exec(page)?.[1] ?? ''
    )
      .split(' ')
      .map(Number);
    const fonts = new Map(
      [...(/\/Font <<(.*?)>>/s.exec(page)?.[1] ?? '').matchAll(/\/(\w+) (\d+) 0 R/g)].map(
        ([, name = '', font]) => {
          const letters = /\/ToUnicode (\d+) 0 R/.exec(bodyOf(font))?.[1];
          return [name, lettersOf(streamOf(bodyOf(letters)))] as const;
        },
      ),
    );
    return {
      widthMm: (right - left) * MM_PER_POINT,
      heightMm: (top - bottom) * MM_PER_POINT,
      text: textOf(streamOf(bodyOf(/\/Contents (\d+) 0 R/.exec(page)?.[1])), fonts),
    };
  });
}

function streamOf(body: string): string {
  const [head = '', , data = ''] = /^(.*?)stream(\r?\n)(.*)endstream/s.exec(body)?.slice(1) ?? [];
  const raw = Buffer.from(data, 'latin1');
  return head.includes('/FlateDecode') ? inflateSync(raw).toString('latin1') : data;
}

/** What each glyph of a font stands for. */
function lettersOf(map: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>();
  const put = (glyph: number, code: string, more = 0) => {
    const units = (code.match(/.{4}/g) ?? []).map((unit) => Number.parseInt(unit, 16));
    const last = units.length - 1;
    letters.set(
      glyph,
      String.fromCharCode(...units.map((unit, at) => (at === last ? unit + more : unit))),
    );
  };
  for (const [, part = ''] of map.matchAll(/beginbfchar(.*?)endbfchar/gs)) {
    for (const [, glyph = '', code = ''] of part.matchAll(/<(\w+)> <(\w+)>/g)) {
      put(Number.parseInt(glyph, 16), code);
    }
  }
  for (const [, part = ''] of map.matchAll(/beginbfrange(.*?)endbfrange/gs)) {
    for (const [, from = '', to = '', code = ''] of part.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      const first = Number.parseInt(from, 16);
      for (let glyph = first; glyph <= Number.parseInt(to, 16); glyph++) {
        put(glyph, code, glyph - first);
      }
    }
  }
  return letters;
}

type Fonts = ReadonlyMap<string, ReadonlyMap<number, string>>;

function textOf(content: string, fonts: Fonts): string {
  let [font, text] = [fonts.get(''), ''];
  for (const [, name, glyphs] of content.matchAll(/\/(\w+) [\d.]+ Tf|<([0-9A-F]+)>/g)) {
    if (name !== undefined) font = fonts.get(name);
    for (const glyph of glyphs?.match(/.{4}/g) ?? []) {
      text += font?.get(Number.parseInt(glyph, 16)) ?? '\uFFFD';
    }
  }
  return asPrinted(text);
}

/** A text as it is compared with a printed one: letters drawn as one are two, and spaces count for nothing. */
export function asPrinted(text: string): string {
  return text.normalize('NFKC').replace(/\s/g, '');
}
