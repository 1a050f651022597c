import { describe, expect, it } from 'vitest';
import { answerLine } from '../../../src/headless/answer-line';
import { answerFit } from '../../../src/headless/fit-answer';
import { answerOptions } from '../../../src/headless/options-answer';
import { answerPlay } from '../../../src/headless/play-answer';

/** What stands for an id in an answer, letter for letter. */
const idIn = (answer: string) => /^\{"id":(.*),"ok":/.exec(answer)?.[1];

const AWKWARD = [
  '12345678901234567890',
  '-98765432109876543210',
  '1e400',
  '-1E-400',
  '0.12345678901234567890123',
  '[12345678901234567890,1]',
  '{"a":[{"id":12345678901234567890}],"b":"x"}',
  '{"a":{"b":1e400},"12345678901234567890":"12345678901234567890"}',
  '["\\"id\\":",1e400,"#","#9"]',
];

describe('an id that a double cannot hold', () => {
  it.each(AWKWARD)('%s comes back as it is written', (id) => {
    for (const answer of [answerLine, answerFit, answerOptions, answerPlay]) {
      expect(idIn(answer(`{"side":1,"id":${id},"note":2}`, 1))).toBe(id);
    }
  });

  it('comes back from among readings too, and from what is said of them', () => {
    const reading = (id: string, landingM: number) =>
      `{"id":${id},"trial":"line","side":0.45,"read":{"landingM":${landingM}}}`;
    const readings = [
      reading('12345678901234567890', -0.05),
      reading('12345678901234567891', -0.051),
      reading('12345678901234567892', 0.4),
    ];
    const answer = answerFit(`{"id":1,"tableLengthM":2.54,"readings":[${readings.join()}]}`, 1);
    for (const last of [0, 1, 2]) expect(answer).toContain(`{"id":1234567890123456789${last},`);
    expect(answer).toContain('"doubtful":[12345678901234567892]');
    expect(JSON.parse(answer).ok).toBe(true);
  });

  it('is the only number that is taken for text', () => {
    const shot = '"distanceM":1.1500000000000001,"cutDeg":2e1,"side":0,"height":0,"elevationDeg":0';
    const answer = answerLine(`{${shot},"speedMps":2,"id":1e400,"idle":1e1}`, 1);
    expect(JSON.parse(answer.replace('1e400', '0'))).toMatchObject({ ok: true, unknown: ['idle'] });
  });

  it('is of the last of two, and survives text that looks like it', () => {
    const shown = answerLine(
      '{"note":"\\"id\\":[12345678901234567890]\\\\","id":1e400,"id":2e400}',
      1,
    );
    expect(idIn(shown)).toBe('2e400');
    expect(JSON.parse(shown.replace('2e400', '0')).unknown).toEqual(['note']);
  });

  it('makes no object of what is none', () => {
    for (const line of ['{"id":012345678901234567890}', '{"id":{1e400:1}}', '[{"id":1e400}]']) {
      expect(JSON.parse(answerLine(line, 3))).toMatchObject({ reason: 'malformed', line: 3 });
    }
  });

  it('is found in a long line whose text escapes much', () => {
    const line = `{"note":"${'\\n'.repeat(4e6)}","id":12345678901234567890}`;
    expect(idIn(answerLine(line, 1))).toBe('12345678901234567890');
  });
});
