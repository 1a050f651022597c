import { ChoosePlace } from './choose/ChoosePlace';
import { KitPlace } from './kit/KitPlace';
import { LogPlace } from './log/LogPlace';

/** The places beside Shot, which come in one script. */
export const PLACES = { choose: ChoosePlace, kit: KitPlace, log: LogPlace } as const;
