import { directCut } from '../../../engine/goal/goal';
import type { KitSpread } from '../../../engine/kit/kit-spread';
import type { RankQuestion } from '../../../engine/plan/refine-way';
import type { Option } from '../../../engine/plan/solve-option';
import type { SavedPosition } from '../../../store/saved-position';
import { askedByWay } from '../../log/shot-to-log';
import { type AskedFrom, askedOf } from '../asked-of';
import { shotToAsk } from '../send-to-shot';
import type { AllWaysPorts } from './create-all-ways';
import type { ShownWay } from './shown-way';

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
  const askedBy = ({ told }: ShownWay): Direct | null => {
    if ('struck' in told || told.shot === null) return null;
    const { shot, goal, option } = told;
    const now = from();
    const position: SavedPosition = { ...now.position, goal: directCut(goal.ball, goal.pocket) };
    const asked = askedOf({ ...now, position, shot });
    return asked && { asked, option };
  };
  return {
    asShot(way) {
      const shot = askedBy(way);
      return shot && shotToAsk(shot.asked, shot.option);
    },
    asLogged(way) {
      const shot = askedBy(way);
      return shot && askedByWay(shot.asked, shot.option, spreadAlong(shot.asked));
    },
  };
}

interface Direct {
  readonly asked: RankQuestion;
  readonly option: Option;
}
