import { answerLines } from './json-lines';
import { answerOptions } from './options-answer';

await answerLines(answerOptions);
