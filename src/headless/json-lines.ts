import { stdin, stdout } from 'node:process';
import { overlong } from './parse-line';
import { splitLines } from './split-lines';

/** Answers a line; lines are counted from 1. */
export type AnswerLine = (line: string, lineNumber: number) => string;

/** One JSON object a line in, one a line out, in order. Ends where nobody reads on. */
export async function answerLines(answer: AnswerLine): Promise<void> {
  // Each write is told of its own error; unheard, it would end the program with a stack.
  stdout.on('error', () => {});
  let lineNumber = 0;
  for await (const line of splitLines(stdin)) {
    lineNumber++;
    const told = line === null ? JSON.stringify(overlong(lineNumber)) : answer(line, lineNumber);
    if (!(await isTaken(`${told}\n`))) return;
  }
}

/** Whether a text was written; false where the other end of the pipe is closed. */
function isTaken(text: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    stdout.write(text, (error) => {
      if (!error) resolve(true);
      else if ('code' in error && error.code === 'EPIPE') resolve(false);
      else reject(error);
    });
  });
}
