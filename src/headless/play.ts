import { answerLines } from './json-lines';
import { answerPlay } from './play-answer';

await answerLines(answerPlay);
