/** The longest line that is read, in bytes. */
export const MOST_LINE_BYTES = 64e6;

const LINE_FEED = 10;

/**
 * The lines of a stream of UTF-8, byte-order marks left out; a carriage return is left to whoever
 * reads the line, for whom it is white space. A line longer than is read is null, and never held.
 */
export async function* splitLines(
  chunks: AsyncIterable<Buffer>,
  mostBytes = MOST_LINE_BYTES,
): AsyncGenerator<string | null> {
  let parts: Buffer[] = [];
  let bytes = 0;
  const take = (part: Buffer) => {
    bytes += part.length;
    if (bytes > mostBytes) parts = [];
    else parts.push(part);
  };
  const finish = () => {
    const line = bytes > mostBytes ? null : new TextDecoder().decode(Buffer.concat(parts));
    parts = [];
    bytes = 0;
    return line;
  };
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf(LINE_FEED); end >= 0; end = chunk.indexOf(LINE_FEED, from)) {
      take(chunk.subarray(from, end));
      yield finish();
      from = end + 1;
    }
    take(chunk.subarray(from));
  }
  const last = finish();
  if (last !== '') yield last;
}
