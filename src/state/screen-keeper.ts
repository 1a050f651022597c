import type { NotedText } from '../store/noted-text';

/**
 * Looks after the note of the last screen, so that it is never of another state than is kept: it is
 * taken away before anything is written, and made anew only by a page that nobody has written beside.
 */
export interface ScreenKeeper {
  /** Something is about to be written: no start may show the screen that is noted. */
  beforeWrite(): void;
  /** One of those writes was answered. */
  afterWrite(): void;
  /** Notes the screen as it stands, unless that may not be what is kept. */
  keep(): void;
}

export interface ScreenKeeperPorts {
  readonly note: NotedText;
  /** A name that no other page has. */
  readonly by: string;
  /** Notes the screen in {@link note}, where it is one that a start would show. */
  readonly noteScreen: () => void;
  /** Resolves once a frame is out that shows all that has changed. */
  readonly afterFrame: () => Promise<void>;
}

export function createScreenKeeper(ports: ScreenKeeperPorts): ScreenKeeper {
  const { note, noteScreen, afterFrame } = ports;
  // No screen: another page tells by it that this one wrote last, and may know what it does not.
  const mark = `~${ports.by}`;
  // As this page found or left it.
  let known = note.get();
  let [writes, answers] = [0, 0];
  let isDrawn = true;

  return {
    beforeWrite() {
      writes += 1;
      isDrawn = false;
      if (known !== mark || note.get() !== mark) {
        if (!note.set(mark)) note.set(null);
      }
      known = mark;
    },
    afterWrite() {
      answers += 1;
      const drawn = writes;
      if (answers === writes) {
        void afterFrame().then(() => {
          isDrawn ||= drawn === writes;
        });
      }
    },
    keep() {
      if (!isDrawn || answers < writes || note.get() !== known) return;
      if (known?.startsWith('~') && known !== mark) return;
      noteScreen();
      known = note.get();
    },
  };
}
