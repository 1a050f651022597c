import type { PictureHand } from '../app-models';
import { nextPart, PART_WORDS, partUnder } from './named-part';
import { OffFinger } from './OffFinger';
import { shooterGrip, stripGrip } from './picture-grips';
import { RunRow } from './RunRow';

/** What answers a finger on the pictures of Shot, and what it drags: it comes once they stand. */
export const pictureHand: PictureHand = {
  nextPart,
  PART_WORDS,
  partUnder,
  shooterGrip,
  stripGrip,
  RunRow,
  OffFinger,
};
