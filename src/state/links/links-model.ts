import type { ReadonlySignal } from '@preact/signals';
import type { ShareOutcome } from '../../sensors/share-file';
import type { LinkOutcome } from '../../sensors/share-link';
import type { LinkFault } from '../../store/links/link-text';
import type { Shared } from '../../store/links/shared';
import type { ShelfName } from '../../store/records';

/** What became of a link that was handed out. */
export type HandedOut = LinkOutcome;

/** Something to hand to somebody, as a link. */
export interface Outgoing {
  readonly shared: Shared;
  /** The whole address. */
  readonly url: string;
  /** Whether a code takes it: its data is 300 bytes at most. */
  readonly fitsCode: boolean;
}

/** What a link brought; `mended`: how many things in it had to be. */
export type IncomingLink =
  | { readonly kind: 'none' }
  | { readonly kind: 'refused'; readonly fault: LinkFault }
  | {
      readonly kind: 'brings';
      /** The text it was found in. */
      readonly text: string;
      readonly shared: Shared;
      readonly mended: number;
    };

/** What of it is wanted. */
export interface Wanted {
  readonly shot: boolean;
  readonly position: boolean;
  readonly kit: boolean;
}

/** What was kept of a link, and can be given back. */
export interface KeptOfLink extends Wanted {
  /** The records that were not here before. */
  readonly added: readonly { readonly shelf: ShelfName; readonly id: string }[];
  /** Whether the kit is in play now. */
  readonly isInPlay: boolean;
  /** Whether a way was laid on the position. */
  readonly isLaid: boolean;
}

/** Shots, positions and kits, handed from phone to phone as links. */
export interface LinksModel {
  /**
   * What is shared under a name of the address: `shot`, `way`, `position`, `kit`, a position as
   * `position/<id>`, a record as `cues/<id>`; null where there is none.
   */
  outgoing(what: string, withKit: boolean): Outgoing | null;
  /** Whether the page has a share sheet; else links go to the clipboard. */
  readonly hasSheet: boolean;
  /** Hands it out; call it within a tap. */
  share(url: string): Promise<HandedOut>;
  /** Hands the link out as a text in a file. */
  save(url: string): Promise<ShareOutcome>;
  readonly incoming: ReadonlySignal<IncomingLink>;
  /** Looks at a link, or at a text with one in it; nothing is kept. */
  look(text: string): void;
  leave(): void;
  /** One line on why it was not kept, or null. */
  readonly problem: ReadonlySignal<string | null>;
  /** Keeps what is wanted of {@link incoming}, beside what is here. */
  keep(wanted: Wanted): void;
  /** Null where nothing was kept, or it was given back. */
  readonly kept: ReadonlySignal<KeptOfLink | null>;
  /** Gives back what was kept last; what has changed since stays. */
  undo(): void;
}
