/** Far more than a lifetime of readings takes as text. Invented. */
const MOST_BYTES = 20_000_000;

export type OpenedFile =
  | { readonly kind: 'read'; readonly text: string }
  /** Not read at all: a video picked by mistake would fill the phone's memory. */
  | { readonly kind: 'too-large'; readonly sizeBytes: number; readonly mostBytes: number }
  /** Gone, or the browser was not let at it, as happens to files that lie in a cloud. */
  | { readonly kind: 'unreadable' };

/** The text of a file that the person picked. Never rejects. */
export async function openFile(
  file: Pick<File, 'size' | 'text'>,
  mostBytes = MOST_BYTES,
): Promise<OpenedFile> {
  if (file.size > mostBytes) return { kind: 'too-large', sizeBytes: file.size, mostBytes };
  try {
    return { kind: 'read', text: await file.text() };
  } catch {
    return { kind: 'unreadable' };
  }
}
