import type { Page } from 'playwright-core';

/** Does the same things over and over in the page, as fast as the page follows. */
export interface KeepSaving {
  /** Where it is done. */
  readonly hash: string;
  /** What is there by then. */
  readonly shows: string;
  begin(page: Page): Promise<void>;
}

/** Takes readings of the line trial, one after another. */
export const KEEP_READING: KeepSaving = {
  hash: '#kit/measure',
  shows: '.trial-row',
  begin: (page) =>
    page.evaluate(() => {
      const all = <E extends Element>(selector: string) => [
        ...document.querySelectorAll<E & HTMLElement>(selector),
      ];
      const named = (name: string) =>
        all('button').find(({ textContent }) => textContent?.trim().endsWith(name));
      // A length that the trial takes: one it refuses would stay there for ever.
      const keys = ['left', '1', '2', 'Enter'];
      let pressed = 0;
      const figure = () => {
        pressed += 1;
        return named(keys[(pressed - 1) % keys.length] ?? '');
      };
      setInterval(() => {
        const title = document.querySelector('h1')?.textContent;
        const isOpen = document.querySelector('.attempt') !== null;
        const trial = all('.trial-row').find(({ textContent }) => textContent?.startsWith('Line'));
        const next = document.querySelector<HTMLElement>('.attempt-control > .button-main');
        if (title === 'Taken down') named('To all trials')?.click();
        else if (!isOpen) (trial ?? named('Play it'))?.click();
        else if (title === 'Where did it touch?') figure()?.click();
        else next?.click();
      }, 15);
    }),
};

/** Copies a cue, and marks a change of the copy. */
export const KEEP_COPYING_CUES: KeepSaving = {
  hash: '#kit/cues',
  shows: '.record-list',
  begin: (page) =>
    page.evaluate(() => {
      const press = (selector: string) => document.querySelector<HTMLElement>(selector)?.click();
      // Behind the button of its row.
      const pressCopy = () =>
        press(
          document.querySelector('[aria-label^="Copy "]')
            ? '[aria-label^="Copy "]'
            : '.record-more',
        );
      let turn = 0;
      setInterval(() => {
        const isOpen = document.querySelector('.record-history') !== null;
        turn = isOpen ? turn + 1 : 0;
        if (!isOpen) pressCopy();
        else
          press(turn === 1 ? '.record-history .record-actions .button' : '.panel-header .button');
      }, 15);
    }),
};

/** Copies a position. */
export const KEEP_COPYING_POSITIONS: KeepSaving = {
  hash: '#choose/positions',
  shows: '.record-list',
  begin: (page) =>
    page.evaluate(() => {
      setInterval(() => {
        const copy = document.querySelector<HTMLElement>('[aria-label^="Copy "]');
        (copy ?? document.querySelector<HTMLElement>('.record-more'))?.click();
      }, 15);
    }),
};
