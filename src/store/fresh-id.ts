/** The part of the browser's Crypto that is used; the first is missing outside https. */
export interface RandomSource {
  readonly randomUUID?: (() => string) | undefined;
  getRandomValues(array: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer>;
}

/** An id that no other record has, on this device or any other. */
export function freshId(random: RandomSource = globalThis.crypto): string {
  if (random.randomUUID) return random.randomUUID();
  const bytes = random.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
