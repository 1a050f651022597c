/**
 * A link's data, one thing after the other. Whoever writes gives each and gets it back as it will be
 * read; whoever reads gives anything, and gets what was written: so one walk does both.
 */
export interface LinkBytes {
  /** A whole number from 0 on: seven bits a byte, the lowest first. */
  count(whole: number): number;
  /** Any finite number, to 8 digits and 15 decimals: what has fewer is kept exactly. */
  number(value: number): number;
  text(line: string): string;
}

/** Those of a link that came. What is read beyond the end is 0 or empty. */
export interface LinkReader extends LinkBytes {
  /** How many bytes are left; less than none where more was read than there was. */
  left(): number;
}

/** A number is off by 5e-8 of itself at most: 0.2 µm at 4 m. */
const DIGITS = 8;

/** How many decimals there are is told by the lowest four bits. */
const MOST_DECIMALS = 15;
const PLACES = MOST_DECIMALS + 1;

/** Enough for any number here, and still exact. */
const MOST_BYTES = 7;

export function linkWriter(bytes: number[]): LinkBytes {
  const count = (whole: number) => {
    let rest = whole;
    for (; rest >= 128; rest = Math.floor(rest / 128)) bytes.push((rest % 128) + 128);
    bytes.push(rest);
    return whole;
  };
  return {
    count,
    number(value) {
      const [digits = '', power] = value.toExponential(DIGITS - 1).split('e');
      let whole = Number(digits.replace('.', ''));
      let decimals = DIGITS - 1 - Number(power);
      for (; decimals > MOST_DECIMALS || (decimals > 0 && whole % 10 === 0); decimals -= 1) {
        whole = Math.trunc(whole / 10);
      }
      for (; decimals < 0; decimals += 1) whole *= 10;
      count(Math.abs(whole) * 2 * PLACES + (whole < 0 ? PLACES : 0) + decimals);
      return value;
    },
    text(line) {
      const encoded = new TextEncoder().encode(line);
      count(encoded.length);
      bytes.push(...encoded);
      return line;
    },
  };
}

export function linkReader(bytes: Uint8Array): LinkReader {
  let at = 0;
  const count = () => {
    let whole = 0;
    for (let place = 0; place < MOST_BYTES; place += 1) {
      const byte = bytes[at] ?? 0;
      at += 1;
      whole += (byte % 128) * 128 ** place;
      if (byte < 128) break;
    }
    return whole;
  };
  return {
    left: () => bytes.length - at,
    count,
    number() {
      const packed = count();
      const sign = packed & PLACES ? '-' : '';
      // As it was typed: a division would be off in the last bit.
      return Number(`${sign}${Math.floor(packed / (2 * PLACES))}e-${packed % PLACES}`);
    },
    text() {
      const length = count();
      const line = bytes.subarray(at, at + length);
      at += length;
      return new TextDecoder().decode(line);
    },
  };
}
