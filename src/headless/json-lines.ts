import { stdin, stdout } from 'node:process';
import { createInterface } from 'node:readline';

/** Answers a line; lines are counted from 1. */
export type AnswerLine = (line: string, lineNumber: number) => string;

/** One JSON object a line in, one a line out, in order. */
export async function answerLines(answer: AnswerLine): Promise<void> {
  let lineNumber = 0;
  for await (const line of createInterface({ input: stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    lineNumber++;
    if (!stdout.write(`${answer(line, lineNumber)}\n`)) {
      await new Promise((drained) => stdout.once('drain', drained));
    }
  }
}
