import type { FitJob, FitReport } from '../engine/fit/fit-report';
import type { Work } from './engine-pool';

const OVERTAKEN = 'Something newer was asked.';

interface Waiting {
  readonly job: FitJob;
  readonly resolve: (report: FitReport) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * The report of a job, worked out one at a time. Where it waits while another is worked out, only
 * the last one asked for does: one that is overtaken is rejected, and so is one that could not be
 * worked out.
 */
export function createFitClient(work: Work): (job: FitJob) => Promise<FitReport> {
  let isRunning = false;
  let next: Waiting | null = null;

  function begin({ job, resolve, reject }: Waiting): void {
    isRunning = true;
    work('fit', job).then(
      (report) => finish(() => resolve(report)),
      (error) => finish(() => reject(error)),
    );
  }
  function finish(settle: () => void): void {
    const then = next;
    isRunning = false;
    next = null;
    settle();
    if (then) begin(then);
  }

  return (job) =>
    new Promise((resolve, reject) => {
      const asked = { job, resolve, reject };
      if (isRunning) {
        next?.reject(new Error(OVERTAKEN));
        next = asked;
      } else {
        begin(asked);
      }
    });
}
