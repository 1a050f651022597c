/** Settles as the work does, or rejects with a TimeoutError once the time is up. */
export async function withinTime<T>(work: Promise<T>, limitMs: number): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_resolve, reject) => {
    const late = new DOMException(`No answer within ${limitMs} ms`, 'TimeoutError');
    timer = setTimeout(() => reject(late), limitMs);
  });
  try {
    return await Promise.race([work, limit]);
  } finally {
    clearTimeout(timer);
  }
}
