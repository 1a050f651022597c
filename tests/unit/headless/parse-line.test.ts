import { describe, expect, it } from 'vitest';
import { answerLine } from '../../../src/headless/answer-line';
import { parseLine } from '../../../src/headless/parse-line';

const nested = (depth: number) => `{"id":${'['.repeat(depth)}${']'.repeat(depth)}}`;

describe('a line', () => {
  it('holds an object, or nothing', () => {
    expect(parseLine('{"a":[1]}')).toEqual({ a: [1] });
    for (const text of ['', '[]', '3', 'null', '{']) expect(parseLine(text)).toBeNull();
  });

  it('may nest, but not without end: what is given back must be written too', () => {
    expect(parseLine(nested(20))).not.toBeNull();
    for (const depth of [100, 10_000, 300_000]) expect(parseLine(nested(depth))).toBeNull();
    expect(JSON.parse(answerLine(nested(300_000), 4))).toMatchObject({
      reason: 'malformed',
      line: 4,
    });
  });
});
