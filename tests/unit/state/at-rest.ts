/** Work put off until the hand rests, which is when a test says so. */
export function createRests() {
  const waiting = new Set<() => void>();
  return {
    later: (work: () => void) => {
      waiting.add(work);
      return () => waiting.delete(work);
    },
    /** The hand rests, and whatever that sets going goes on until nothing more comes of it. */
    async rest(): Promise<number> {
      const due = [...waiting];
      waiting.clear();
      for (const work of due) work();
      await new Promise((resolve) => setTimeout(resolve, 0));
      return due.length;
    },
  };
}

/** A place for one text, which may have something in it from the last visit. */
export function noteIn(note: { text: string | null }) {
  return {
    get: () => note.text,
    set(text: string | null) {
      note.text = text;
      return true;
    },
  };
}
