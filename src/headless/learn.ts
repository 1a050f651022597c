import { answerLines } from './json-lines';
import { answerLearn } from './learn-answer';

await answerLines(answerLearn);
