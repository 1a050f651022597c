import { legalOf } from '../goal/legal';
import type { Position } from '../lie/position';
import type { TablePlay } from '../table/table-play';
import { askedFor, type WaysAsked, type WaysQuestion } from '../ways/ways-question';
import { Ease, type Easiest } from './ease';
import { isHooked } from './hooked';
import { bestInHand } from './in-hand';
import { othersRule, turnAfter } from './turn';

/** What one stroke came to: plain data. */
export interface StrokeWorth {
  /** 0 to 1, for the player. */
  readonly value: number;
  /** Null unless the turn goes on and there is another shot. */
  readonly next: Easiest | null;
  /** Null unless the turn passes. */
  readonly theirs: Theirs | null;
  readonly hasWon: boolean;
}

/** What the other player has. */
export interface Theirs {
  readonly best: number;
  readonly isHooked: boolean;
  readonly isFoul: boolean;
}

/** Tells what strokes at one position are worth to the player. */
export class StrokeJudge {
  private readonly asked: WaysAsked;
  private readonly ease: Ease;

  constructor(question: WaysQuestion) {
    // The ball that is asked for now does not bind the next shot.
    this.asked = askedFor({ ...question, ball: null, pocket: null });
    this.ease = new Ease(question);
  }

  /**
   * Of a stroke that was played: 1 where it won, the ease of the best next shot while it is still the player's
   * turn, 1 less the other player's ease where it is not.
   *
   * @param play null: the tip slipped
   */
  judge(play: TablePlay | null): StrokeWorth {
    const { question, laid } = this.asked;
    const { legal, position } = question;
    const turn = turnAfter(legal, position, laid, play);
    if (turn.kind === 'won' || turn.kind === 'lost') {
      const hasWon = turn.kind === 'won';
      return { value: hasWon ? 1 : 0, next: null, theirs: null, hasWon };
    }
    if (turn.kind === 'goes-on') {
      const next = this.ease.easiest(turn.position, pottableOf(legal, turn.position));
      return { value: next?.chance ?? 0, next, theirs: null, hasWon: false };
    }
    const theirs = this.theirsOf(turn.position, turn.isFoul);
    return { value: 1 - theirs.best, next: null, theirs, hasWon: false };
  }

  private theirsOf(position: Position, isFoul: boolean): Theirs {
    const { question } = this.asked;
    const rule = othersRule(question.legal);
    const pottable = pottableOf(rule, position);
    if (isFoul) {
      const best = bestInHand(this.ease, position, pottable)?.chance ?? 0;
      return { best, isHooked: false, isFoul };
    }
    const easiest = this.ease.easiest(position, pottable);
    if (easiest !== null) return { best: easiest.chance, isHooked: false, isFoul };
    const { first } = legalOf(rule, position);
    return { best: 0, isHooked: isHooked(position, first, question.kit), isFoul };
  }
}

/** The balls that may be hit first and may fall. */
function pottableOf(rule: WaysQuestion['legal'], position: Position): readonly number[] {
  const { first, falls } = legalOf(rule, position);
  return first.filter((ball) => falls.includes(ball));
}
