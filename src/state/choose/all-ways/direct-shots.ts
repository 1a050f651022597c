import { directCut } from '../../../engine/goal/goal';
import type { KitSpread } from '../../../engine/kit/kit-spread';
import type { RankQuestion } from '../../../engine/plan/refine-way';
import type { SavedPosition } from '../../../store/saved-position';
import { askedByWay } from '../../log/shot-to-log';
import { type AskedFrom, askedOf } from '../asked-of';
import { shotToAsk } from '../send-to-shot';
import type { AllWaysPorts } from './create-all-ways';
import type { ShownWay } from './look-for-ways';

/**
 * A way as Shot asks it and as it is logged, if it is a direct cut: both know a straight line to one
 * ball alone.
 *
 * @param spreadAlong how little is known of the kit along a shot
 */
export function directShots(
  from: () => Omit<AskedFrom, 'shot'>,
  spreadAlong: (asked: RankQuestion) => KitSpread,
): Pick<AllWaysPorts, 'asShot' | 'asLogged'> {
  const askedBy = ({ told: { shot, goal } }: ShownWay): RankQuestion | null => {
    if (shot === null) return null;
    const now = from();
    const position: SavedPosition = { ...now.position, goal: directCut(goal.ball, goal.pocket) };
    return askedOf({ ...now, position, shot });
  };
  return {
    asShot(way) {
      const asked = askedBy(way);
      return asked && shotToAsk(asked, way.told.option);
    },
    asLogged(way) {
      const asked = askedBy(way);
      return asked && askedByWay(asked, way.told.option, spreadAlong(asked));
    },
  };
}
