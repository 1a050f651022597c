import { generate } from 'lean-qr/nano';

/** A QR code (ISO/IEC 18004) as an SVG path, a module of it 1 wide. */
export interface CodePath {
  /** Of the whole square, with the quiet zone around it. */
  readonly size: number;
  readonly d: string;
}

/** As wide as the standard asks for, modules. */
const QUIET = 4;

/**
 * The code of a text. Nothing on a screen is smudged: the least correction, as it is left to the library,
 * makes the largest modules.
 * @param text at most 2,900 bytes
 */
export function codePath(text: string): CodePath {
  const code = generate(text);
  const { size } = code;
  let d = '';
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) {
      const from = x;
      while (code.get(x, y)) x += 1;
      if (x > from) d += `M${from + QUIET} ${y + QUIET}h${x - from}v1h${from - x}z`;
    }
  }
  return { size: size + 2 * QUIET, d };
}
