/** The part of the browser's Storage that is used. */
export type DraftStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** May throw or give null: storage that is full or forbidden is the same here as none. */
export type FindStorage = () => DraftStorage | null;

/** One text in the browser's smaller storage, which takes it at once. */
export interface NotedText {
  get(): string | null;
  /** Null removes it; false where it did not work. */
  set(text: string | null): boolean;
}

export function notedText(find: FindStorage, key: string): NotedText {
  return {
    get() {
      try {
        return find()?.getItem(key) ?? null;
      } catch {
        return null;
      }
    },
    set(text) {
      try {
        const storage = find();
        if (text === null) storage?.removeItem(key);
        else storage?.setItem(key, text);
        return storage !== null;
      } catch {
        return false;
      }
    },
  };
}

/** What a text says, or undefined where that is nothing or no JSON. */
export function readNoted({ get }: NotedText): unknown {
  const text = get();
  // An error has a browser read the whole script again for where it was thrown.
  if (text === null) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
