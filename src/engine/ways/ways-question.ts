import type { WayKind } from '../goal/goal';
import { type LaidTable, laidTable } from '../goal/laid-table';
import { type Legal, type LegalRule, legalOf } from '../goal/legal';
import type { RestZone } from '../goal/scene';
import type { Kit } from '../kit/kit';
import type { KitCorrelation, KitSpread } from '../kit/kit-spread';
import type { Position } from '../lie/position';
import type { StrokeProfile } from '../room/stroke-profile';
import type { PocketName } from '../table/pocket-shape';
import type { TableShape } from '../table/table-shape';

/** A table with balls on it, what may be played there, and by whom with what: plain data. */
export interface WaysQuestion {
  readonly position: Position;
  readonly shape: TableShape;
  /** Its bed as seen from the break end. */
  readonly kit: Kit;
  readonly spread: KitSpread;
  /** Left out: the quantities of the kit are independent. */
  readonly correlation?: KitCorrelation;
  readonly profile: StrokeProfile;
  readonly legal: LegalRule;
  /** The kinds to look for. */
  readonly kinds: readonly WayKind[];
  /** The ball that is to fall; null: any that may. */
  readonly ball: number | null;
  /** Null: any. */
  readonly pocket: PocketName | null;
  /** Null: the cue ball may rest anywhere. */
  readonly zone: RestZone | null;
}

/** What of a question every part of the search goes by. */
export interface WaysAsked extends Legal {
  readonly question: WaysQuestion;
  readonly laid: LaidTable;
}

export function askedFor(question: WaysQuestion): WaysAsked {
  const { position, shape, legal, ball } = question;
  const { first, falls } = legalOf(legal, position);
  return {
    question,
    laid: laidTable(position, shape),
    first,
    falls: ball === null ? falls : falls.filter((one) => one === ball),
  };
}

/** The pockets that may be played at. */
export function pocketsOf({ shape, pocket }: WaysQuestion) {
  return shape.pockets.filter(({ name }) => pocket === null || name === pocket);
}
