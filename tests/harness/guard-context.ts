import type { BrowserContext } from 'playwright-core';

export interface ContextGuard {
  /**
   * What went wrong so far in any page or service worker of the context, in words: requests that
   * left the origin, errors on the console (a broken content security policy is one) and uncaught
   * exceptions. A test expects it to equal [].
   */
  readonly problems: readonly string[];
  /** From now on the server is meant to be away: failing to reach it is not a problem. */
  expectServerGone(): void;
}

const CANNOT_REACH = /net::ERR_(CONNECTION_REFUSED|CONNECTION_RESET|EMPTY_RESPONSE|FAILED)/;

/** Watches everything a browser context does from now on. */
export function guardContext(context: BrowserContext, origin: string): ContextGuard {
  const problems: string[] = [];
  let serverGone = false;

  context.on('request', (request) => {
    const url = new URL(request.url());
    if (url.origin !== origin && url.protocol !== 'data:') {
      problems.push(`request to ${request.url()}`);
    }
  });
  context.on('console', (message) => {
    if (message.type() !== 'error') return;
    if (serverGone && CANNOT_REACH.test(message.text())) return;
    problems.push(`console error: ${message.text()}`);
  });
  context.on('weberror', (webError) => {
    problems.push(`uncaught: ${webError.error().message}`);
  });
  return {
    problems,
    expectServerGone: () => {
      serverGone = true;
    },
  };
}
