import { answerFit } from '../../../src/headless/fit-answer';

/** Asks the door, in an object instead of a line. */
export const ask = (fields: object, line = 1) =>
  JSON.parse(answerFit(JSON.stringify(fields), line));

/** Invented readings: a firm line either side, 5 cm off to the side that squirt sends it. */
export const LINES = [
  { id: 'right', trial: 'line', side: 0.45, read: { landingM: -0.05 } },
  { id: 'left', trial: 'line', side: -0.45, read: { landingM: 0.05 } },
];
/** The least of a request that has them. */
export const JOB = { id: 7, tableLengthM: 2.54, readings: LINES };

/** What the door tells of a quantity. */
export interface Told {
  readonly part: string;
  readonly of: string;
  readonly quantity: string;
  readonly value: number;
  readonly sd: number;
  readonly sdBefore: number;
}
