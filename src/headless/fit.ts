import { answerFit } from './fit-answer';
import { answerLines } from './json-lines';

await answerLines(answerFit);
