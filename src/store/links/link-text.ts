import { crc32 } from '../backup/crc-32';
import { linkReader, linkWriter } from './link-bytes';
import { LINK_VERSION, SEAL_BYTES } from './link-layout';
import { walkShared } from './link-walk';
import { type ParsedShared, parseShared } from './parse-shared';
import type { Shared } from './shared';

/** Why a link is not opened. */
export type LinkFault = 'no-link' | 'damaged' | 'newer';

export type ReadLink =
  | ({ readonly ok: true } & ParsedShared)
  | { readonly ok: false; readonly fault: LinkFault };

/** Longer than any link of ours: sixteen balls, five names of sixty letters, a kit and a shot. */
export const LONGEST_LINK = 2400;

const WITHIN_TEXT = /kit\/link\/([\w-]+)/;
const ALONE = /^\s*([\w-]+)\s*$/;

const NOTHING: Shared = { shot: null, position: null, kit: {} };

/** A link as text that an address may end in: letters, digits, - and _. */
export function writeLink(shared: Partial<Shared>): string {
  const bytes: number[] = [];
  const to = linkWriter(bytes);
  to.count(LINK_VERSION);
  walkShared({ ...to, goesOn: () => true, meetNewer() {} }, { ...NOTHING, ...shared });
  const all = [...bytes, ...sealOf(Uint8Array.from(bytes))];
  const letters = btoa(String.fromCharCode(...all));
  return letters.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** How many bytes of data a link's text stands for. */
export function linkBytes(link: string): number {
  return Math.floor((link.length * 3) / 4);
}

/**
 * What a link brings, out of any text that has one in it: an address, a message around it, or the
 * link's text alone. Never throws.
 */
export function readLink(text: string): ReadLink {
  const link = (WITHIN_TEXT.exec(text) ?? ALONE.exec(text))?.[1] ?? '';
  if (link === '' || link.length > LONGEST_LINK) return refused('no-link');
  const data = unsealed(link);
  if (data === null) return refused('damaged');
  const from = linkReader(data);
  const version = from.count(LINK_VERSION);
  let isNewer = version > LINK_VERSION;
  if (version === LINK_VERSION) {
    const meetNewer = () => {
      isNewer = true;
    };
    const raw = walkShared({ ...from, goesOn: () => from.left() > 0, meetNewer }, NOTHING);
    const parsed = from.left() === 0 ? parseShared(raw) : null;
    if (parsed && !isNewer) return { ok: true, ...parsed };
  }
  return refused(isNewer ? 'newer' : 'damaged');
}

function refused(fault: LinkFault): ReadLink {
  return { ok: false, fault };
}

function sealOf(data: Uint8Array): readonly number[] {
  const sum = Number.parseInt(crc32(data), 16);
  return Array.from({ length: SEAL_BYTES }, (_, place) => (sum >>> (8 * place)) & 0xff);
}

/** The bytes of a link; null where they are not as they were sealed. */
function unsealed(link: string): Uint8Array | null {
  // No bytes come out at so many letters.
  if (link.length % 4 === 1) return null;
  const raw = atob(link.replaceAll('-', '+').replaceAll('_', '/'));
  const bytes = Uint8Array.from(raw, (letter) => letter.charCodeAt(0));
  const data = bytes.subarray(0, -SEAL_BYTES);
  return sealOf(data).join() === bytes.subarray(-SEAL_BYTES).join() ? data : null;
}
