import type { ShooterView } from '../../diagram/shooter-view';

/** Where the upright lines of the drawing begin, px. */
export function topOf({ aim }: ShooterView): number {
  return Math.max(0, (aim?.label.y ?? 0) - 10);
}
