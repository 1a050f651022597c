/** A text to hand out as a file. */
export interface TextFile {
  /** With its ending. */
  readonly name: string;
  readonly mediaType: string;
  readonly text: string;
}

/** A picture to hand out as a file. */
export interface PictureFile extends Omit<TextFile, 'text'> {
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/**
 * Ways of handing a file over, best first. Some browsers' share sheets take a plain text where they
 * refuse JSON, and may say so only when asked to share it.
 */
export const SHARE_WAYS = ['sheet', 'sheet-as-text', 'download'] as const;
export type ShareWay = (typeof SHARE_WAYS)[number];

export type ShareOutcome =
  /** Whatever the person picked has it. */
  | { readonly kind: 'shared'; readonly name: string }
  /** The browser has it; it does not say what became of it. */
  | { readonly kind: 'downloaded'; readonly name: string }
  /** The person closed the sheet. Nothing to say about it. */
  | { readonly kind: 'cancelled' }
  /** The browser refused: it wants another tap, which should try this way. */
  | { readonly kind: 'again'; readonly way: ShareWay };

/** What the page can do with files; see `sharePort`. */
export interface SharePort {
  /** Whether a share sheet serves better than a download here. */
  readonly prefersSheet: boolean;
  canShare(files: File[]): boolean;
  /** Rejects with what the browser rejects with. */
  share(files: File[]): Promise<void>;
  download(file: File): void;
}

/**
 * Hands a file to the person: through the share sheet where that fits, else as a download.
 * Call it within a tap, and await nothing before: the sheet opens for a fresh tap only. Never
 * rejects.
 *
 * @param from the way to begin with; after `again`, the one it names
 */
export async function shareFile(
  file: TextFile | PictureFile,
  port: SharePort,
  from: ShareWay = 'sheet',
): Promise<ShareOutcome> {
  const way = waysOpen(file, port, from)[0] ?? 'download';
  const blob = fileFor(file, way);
  if (way === 'download') {
    port.download(blob);
    return { kind: 'downloaded', name: blob.name };
  }
  try {
    await port.share([blob]);
    return { kind: 'shared', name: blob.name };
  } catch (error) {
    return outcomeOf(error, way, waysOpen(file, port, from)[1] ?? 'download');
  }
}

/** The ways from one on that the page has. */
function waysOpen(file: TextFile | PictureFile, port: SharePort, from: ShareWay): ShareWay[] {
  return SHARE_WAYS.slice(SHARE_WAYS.indexOf(from)).filter(
    (way) =>
      way === 'download' ||
      (port.prefersSheet &&
        (way === 'sheet' || 'text' in file) &&
        port.canShare([fileFor(file, way)])),
  );
}

function fileFor(file: TextFile | PictureFile, way: ShareWay): File {
  const { name, mediaType } = file;
  const content = 'text' in file ? file.text : file.bytes;
  if (way !== 'sheet-as-text') return new File([content], name, { type: mediaType });
  return new File([content], name.replace(/(\.\w+)?$/, '.txt'), { type: 'text/plain' });
}

function outcomeOf(error: unknown, way: ShareWay, next: ShareWay): ShareOutcome {
  const name = error instanceof Error ? error.name : '';
  if (name === 'AbortError') return { kind: 'cancelled' };
  // A sheet is open already.
  if (name === 'InvalidStateError') return { kind: 'again', way };
  // Too long since the tap, or not this kind of file: the browser does not say which. So the next
  // tap tries the next way, for otherwise it might be refused for ever.
  return { kind: 'again', way: next };
}
