import { stdin, stdout } from 'node:process';
import { createInterface } from 'node:readline';
import { answerLine } from './answer-line';

/** One JSON object a line in, one a line out, in order. */
let lineNumber = 0;
for await (const line of createInterface({ input: stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
  lineNumber++;
  if (!stdout.write(`${answerLine(line, lineNumber)}\n`)) {
    await new Promise((drained) => stdout.once('drain', drained));
  }
}
