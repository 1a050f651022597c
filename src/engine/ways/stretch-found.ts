import type { WayKind } from '../goal/goal';
import type { Lost } from '../goal/task';
import type { FoundWay } from './found-way';

/** Why a way that seemed to be there does not go. */
export type WhyNoWay = Lost | 'foul' | 'too-thin' | 'pocket-closed' | 'in-the-way';

/** Of a kind, how many ways seemed to be there and did not go for one reason. */
export interface Failed {
  readonly kind: WayKind;
  readonly why: WhyNoWay;
  readonly times: number;
}

/** What a part of the search came to. */
export interface StretchFound {
  readonly ways: readonly FoundWay[];
  readonly failed: readonly Failed[];
}
