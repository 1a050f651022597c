import { ChoosePlace } from './choose/ChoosePlace';
import { KitPlace } from './kit/KitPlace';
import { AfterAim } from './log/AfterAim';
import { LogPlace } from './log/LogPlace';
import { NewsLines } from './NewsLines';
import { QuestionPanel } from './player/QuestionPanel';
import { InputControl } from './shot/InputControl';
import { pictureHand } from './shot/picture-hand';
import { WhyPanel } from './shot/WhyPanel';

/** All of the screen that comes once the first answer stands, in one script. */
export const PARTS = {
  news: NewsLines,
  hand: pictureHand,
  control: InputControl,
  why: WhyPanel,
  question: QuestionPanel,
  after: AfterAim,
  choose: ChoosePlace,
  kit: KitPlace,
  log: LogPlace,
} as const;
