import { bytesOfLink, sealedLink } from '../store/links/sealed-link';
import { pick, TEXT_DAMAGES } from './damage-text';
import { hostileHash } from './hostile-hashes';
import type { Random } from './seeded-random';

type Forgery = (bytes: readonly number[], random: Random) => readonly number[];

const place = (bytes: readonly number[], random: Random) => Math.floor(random() * bytes.length);
const anyByte = (random: Random) => Math.floor(random() * 256);

/** What someone who knows the checksum can put into a link. */
const FORGERIES: readonly Forgery[] = [
  (bytes, random) => bytes.with(place(bytes, random), anyByte(random)),
  (bytes, random) => bytes.with(place(bytes, random), pick(random, [0, 1, 127, 128, 255])),
  (bytes, random) => bytes.toSpliced(place(bytes, random), 1),
  (bytes, random) => bytes.toSpliced(place(bytes, random), 0, anyByte(random)),
  (bytes, random) => bytes.toSpliced(place(bytes, random), 1, 255, 255, 255, 255, 255, 255, 127),
  (bytes, random) => bytes.slice(0, place(bytes, random)),
  (bytes, random) => [...bytes, ...bytes.slice(place(bytes, random))],
  (bytes, random) => [pick(random, [0, 2, 3, 200]), ...bytes.slice(1)],
  (_, random) => [1, ...Array.from({ length: Math.floor(random() * 300) }, () => anyByte(random))],
  (_, random) => [1, pick(random, [1, 2, 4, 63, 66, 127]), ...Array.from({ length: 200 }, () => 0)],
];

/** A text with a link in it, or none, that someone made up to see what breaks. */
export function hostileLink(sound: string, random: Random): string {
  const chance = random();
  if (chance < 0.1) return hostileHash(random);
  if (chance < 0.3) {
    const damage = pick(random, Object.values(TEXT_DAMAGES));
    return damage(`#kit/link/${sound}`, random);
  }
  let bytes: readonly number[] = bytesOfLink(sound);
  for (let more = 1 + Math.floor(random() * 3); more > 0; more -= 1) {
    bytes = pick(random, FORGERIES)(bytes, random);
    if (bytes.length === 0) bytes = [0];
  }
  return `https://example.org/#kit/link/${sealedLink(bytes)}`;
}
