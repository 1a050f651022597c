const DAY_MS = 24 * 60 * 60 * 1000;
const DAYS_IN_MONTH = 30.44;

/** How long ago something was, roughly, as people say it. The future counts as today. */
export function agoWords(passedMs: number): string {
  const days = Math.floor(passedMs / DAY_MS);
  if (!(days >= 1)) return 'today';
  if (days === 1) return 'yesterday';
  if (days < 14) return `${days} days ago`;
  if (days < 61) return `${Math.round(days / 7)} weeks ago`;
  const months = Math.round(days / DAYS_IN_MONTH);
  return months < 24 ? `${months} months ago` : `${Math.round(months / 12)} years ago`;
}

/** Whole days that have passed; none where the clock was set back. */
export function daysPassed(passedMs: number): number {
  return Math.max(0, Math.floor(passedMs / DAY_MS));
}

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** A day of the reader's calendar: "3 Mar", with its year where that is not the present one. */
export function dayWords(atMs: number, nowMs: number): string {
  const at = new Date(atMs);
  const day = `${at.getDate()} ${MONTHS[at.getMonth()] ?? ''}`;
  const year = at.getFullYear();
  return year === new Date(nowMs).getFullYear() ? day : `${day} ${year}`;
}
