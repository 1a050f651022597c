/** What became of a link: the sheet has it, the clipboard has it, or neither took it. */
export type LinkOutcome = 'shared' | 'copied' | 'refused';

/** What is needed of a page; `navigator` is one. Browsers lack either, and all do without https. */
export interface LinkPage {
  share?(data: { readonly url: string }): Promise<void>;
  readonly clipboard?: { writeText(text: string): Promise<void> };
}

/**
 * Hands an address to the person: through the share sheet where there is one, else by the clipboard.
 * Call it within a tap, and await nothing before. Never rejects: what is `refused` is to be shown as
 * text that can be selected. A sheet that the person closes has done its work.
 */
export async function shareLink(url: string, page: LinkPage): Promise<LinkOutcome> {
  if (page.share) {
    try {
      await page.share({ url });
      return 'shared';
    } catch (error) {
      if (error instanceof Error && error.name === 'AbortError') return 'shared';
    }
  }
  try {
    await page.clipboard?.writeText(url);
    return page.clipboard ? 'copied' : 'refused';
  } catch {
    return 'refused';
  }
}
