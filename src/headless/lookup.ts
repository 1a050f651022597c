import { answerLine } from './answer-line';
import { answerLines } from './json-lines';

await answerLines(answerLine);
