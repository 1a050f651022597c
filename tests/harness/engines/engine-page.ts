import type { Page } from 'playwright-core';

/**
 * One page of a browser, as little of it as every engine's driver can do alike. What people do to
 * a page is done by the driver, not by a script in the page.
 */
export interface EnginePage {
  readonly engine: EngineName;
  /** Goes to an address and waits for its load, as from the address bar of a new tab. */
  open(url: string): Promise<void>;
  reload(): Promise<void>;
  /**
   * Goes to an address at a phone's width: in a frame, where the window is wider, on a page of the
   * same origin that there is none of. What it evaluates, it evaluates there, until the next `open`.
   */
  openNarrow(url: string): Promise<void>;
  /** Runs a function in the page. It sees nothing but the page and its argument. */
  readonly evaluate: Page['evaluate'];
  /** Touches a place of the screen, or clicks there where the driver knows no fingers. */
  tapAt(x: number, y: number): Promise<void>;
  /** Types instead of all that the focused field holds. */
  typeOver(text: string): Promise<void>;
  /** Gives the page's file field, which `tap` opens, a file. */
  pickFile(path: string, tap: () => Promise<void>): Promise<void>;
  /** Where downloads end up. */
  readonly downloads: string;
  screenshot(): Promise<Buffer>;
  /**
   * What went wrong so far, in words: errors on the console, uncaught exceptions and what the
   * content security policy refused. A test expects it to equal [].
   */
  problems(): Promise<readonly string[]>;
  close(): Promise<void>;
}

export const ENGINES = ['Firefox', 'WebKit'] as const;
export type EngineName = (typeof ENGINES)[number];

/** A phone held upright, CSS pixels. WebKit's window is no narrower than 447. */
export const PHONE_SIZE = { width: 390, height: 844 } as const;
