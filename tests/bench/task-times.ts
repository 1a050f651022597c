import type { CDPSession, Page } from 'playwright-core';

/** The part of an event of a trace that is used; times in microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** How long the thread itself worked at it, which other work on the machine hardly lengthens. */
  readonly tdur?: number;
}

const MARK = 'tasks-of-this-thread';

/**
 * From now on every task of the page's main thread is noted.
 *
 * @returns ends that, and gives how long the thread worked at each, ms, the longest first
 */
export async function noteTasks(page: Page, cdp: CDPSession): Promise<() => Promise<number[]>> {
  const events: TraceEvent[] = [];
  const hear = ({ value }: { value: object[] }) => events.push(...(value as TraceEvent[]));
  cdp.on('Tracing.dataCollected', hear);
  await cdp.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', 'blink.user_timing'] },
  });
  await page.evaluate((name) => performance.mark(name).name, MARK);
  return async () => {
    const complete = new Promise((resolve) => cdp.once('Tracing.tracingComplete', resolve));
    await cdp.send('Tracing.end');
    await complete;
    cdp.off('Tracing.dataCollected', hear);
    const mark = events.find(({ name }) => name === MARK);
    return events
      .filter(({ name }) => name === 'ThreadControllerImpl::RunTask')
      .filter(({ pid, tid }) => pid === mark?.pid && tid === mark.tid)
      .map(({ tdur = 0 }) => tdur / 1000)
      .sort((a, b) => b - a);
  };
}
