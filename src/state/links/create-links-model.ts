import { batch, signal } from '@preact/signals';
import { type SharePort, shareFile } from '../../sensors/share-file';
import { type LinkPage, shareLink } from '../../sensors/share-link';
import { freshId } from '../../store/fresh-id';
import { linkBytes, readLink, writeLink } from '../../store/links/link-text';

import { createKeeping, type KeepingPorts } from './keeping';
import type { IncomingLink, LinksModel } from './links-model';
import { kitToShare, type SharedFrom, sharedOf } from './outgoing';

export interface LinksPorts extends Omit<KeepingPorts, 'newId' | 'choose'> {
  readonly choose: SharedFrom['choose'] & KeepingPorts['choose'];
  readonly page: LinkPage;
  readonly sharing: SharePort;
  /** Where this app lies, without what follows `#`. */
  readonly address: () => string;
  readonly newId?: () => string;
}

/** More data than this makes a code too fine for a phone's screen and camera (our choice). */
const MOST_CODE_BYTES = 300;

const NOTHING: IncomingLink = { kind: 'none' };

/** Nothing that comes by a link is kept before the person says so. */
export function createLinksModel(ports: LinksPorts): LinksModel {
  const { page, sharing, address, newId = freshId } = ports;
  const incoming = signal<IncomingLink>(NOTHING);
  const keeping = createKeeping({ ...ports, newId });
  const leave = () => {
    incoming.value = NOTHING;
  };

  return {
    outgoing(what, withKit) {
      const found = sharedOf(ports, what);
      if (found === null) return null;
      const shared = withKit ? { ...found, kit: kitToShare(ports) } : found;
      const link = writeLink(shared);
      const fitsCode = linkBytes(link) <= MOST_CODE_BYTES;
      return { shared, url: `${address()}#kit/link/${link}`, fitsCode };
    },
    hasSheet: page.share !== undefined,
    share: (url) => shareLink(url, page),
    save: (url) =>
      shareFile({ name: 'leeway-link.txt', mediaType: 'text/plain', text: url }, sharing),
    incoming,
    look(text) {
      const read = readLink(text);
      batch(() => {
        keeping.forget();
        incoming.value = read.ok
          ? { kind: 'brings', text, shared: read.shared, mended: read.mended }
          : { kind: 'refused', fault: read.fault };
      });
    },
    leave,
    problem: keeping.problem,
    keep(wanted) {
      const brought = incoming.peek();
      if (brought.kind === 'brings' && keeping.keep(brought.shared, wanted)) leave();
    },
    kept: keeping.kept,
    undo: keeping.undo,
  };
}
