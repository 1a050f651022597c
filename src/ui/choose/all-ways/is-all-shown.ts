import type { Models } from '../../app-models';
import { modeOf } from '../choose-mode';

/** Whether ways of every kind are listed, in place of what one straight shot can be played with. */
export function isAllShown({ choose, router }: Models<'choose' | 'router'>): boolean {
  return modeOf(router.route.value.panel) === 'ways' && !choose.all.isDirect.value;
}
