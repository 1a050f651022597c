import { type LegalRule, legalOf } from '../goal/legal';
import type { Position } from '../lie/position';
import type { TablePlay } from '../table/table-play';
import { askedFor, type WaysAsked, type WaysQuestion } from '../ways/ways-question';
import { Ease, type Easiest } from './ease';
import { isHooked } from './hooked';
import { bestInHand } from './in-hand';
import { Standing } from './standing';
import { ballsToGo, othersRule, turnAfter } from './turn';
import { usualEase } from './usual-ease';

/**
 * A game is taken to end with the so manieth ball from now. With each ball more, shares of games come nearer to a
 * half, in nearly the same order: told so, ways would look alike.
 */
const BALLS_AHEAD = 2;

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
  private readonly standing: Standing;

  constructor(question: WaysQuestion) {
    // The ball that is asked for now does not bind the next shot.
    this.asked = askedFor({ ...question, ball: null, pocket: null });
    this.ease = new Ease(question);
    this.standing = new Standing(usualEase(this.ease));
  }

  /**
   * Of a stroke that was played: 1 where it won, how the game stands by the best next shot while it is still
   * the player's turn, 1 less how it stands for the other player where it is not.
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
      const balls = Math.max(1, ballsAhead(legal, position) - 1);
      const value = this.standing.share(next?.chance ?? 0, balls);
      return { value, next, theirs: null, hasWon: false };
    }
    const theirs = this.theirsOf(turn.position, turn.isFoul);
    const balls = ballsAhead(othersRule(legal), turn.position);
    const value = 1 - this.standing.share(theirs.best, Math.max(1, balls));
    return { value, next: null, theirs, hasWon: false };
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

function ballsAhead(rule: LegalRule, position: Position): number {
  return Math.min(BALLS_AHEAD, ballsToGo(rule, position));
}

/** The balls that may be hit first and may fall. */
function pottableOf(rule: LegalRule, position: Position): readonly number[] {
  const { first, falls } = legalOf(rule, position);
  return first.filter((ball) => falls.includes(ball));
}
