import { execFile, spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { answerLine } from '../../../src/headless/answer-line';
import { between, seededRandom } from '../../harness/seeded-random';

/** What the command writes for what it is given, one piece after the other. */
function lookup(
  ...input: readonly (string | Buffer)[]
): Promise<{ readonly lines: string[]; readonly code: number | null }> {
  return new Promise((resolve, reject) => {
    const child = spawn('npm', ['run', '-s', 'lookup'], { stdio: ['pipe', 'pipe', 'ignore'] });
    let output = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      output += text;
    });
    child.on('error', reject);
    child.on('close', (code) => {
      resolve({ lines: output.split('\n').slice(0, -1), code });
    });
    Readable.from(input).pipe(child.stdin);
  });
}

const START_TIMEOUT_MS = 300_000;

function requests(count: number): string[] {
  const random = seededRandom(2000);
  return Array.from({ length: count }, (_, id) =>
    JSON.stringify({
      id,
      distanceM: between(random, 0.1, 3),
      cutDeg: between(random, -80, 80),
      side: between(random, -0.4, 0.4),
      height: between(random, -0.3, 0.3),
      elevationDeg: between(random, 0, 40),
      speedMps: between(random, 0.3, 6),
    }),
  );
}

describe('npm run lookup', () => {
  it(
    'answers two thousand lines with two thousand, in order',
    async () => {
      const asked = requests(2000);
      const { lines, code } = await lookup(`${asked.join('\n')}\n`);
      expect(code).toBe(0);
      expect(lines).toEqual(asked.map((line, index) => answerLine(line, index + 1)));
      const answers = lines.map((line) => JSON.parse(line));
      expect(answers.map(({ id }) => id)).toEqual(asked.map((_, id) => id));
      expect(answers.filter(({ ok }) => ok).length).toBeGreaterThan(1000);
    },
    START_TIMEOUT_MS,
  );

  it(
    'takes either kind of line end, and a last line without one',
    async () => {
      const asked = requests(5);
      const { lines } = await lookup(asked.join('\r\n'));
      expect(lines).toEqual(asked.map((line, index) => answerLine(line, index + 1)));
    },
    START_TIMEOUT_MS,
  );

  it(
    'goes on after a blank or broken line, and counts it',
    async () => {
      const [first = '', second = ''] = requests(2);
      const { lines, code } = await lookup(`${first}\n\nbroken\r\n${second}\n`);
      expect(code).toBe(0);
      const answers = lines.map((line) => JSON.parse(line));
      expect(answers).toHaveLength(4);
      expect(answers.map(({ ok, reason, line }) => (reason === 'malformed' ? line : ok))).toEqual([
        JSON.parse(answerLine(first, 1)).ok,
        2,
        3,
        JSON.parse(answerLine(second, 4)).ok,
      ]);
    },
    START_TIMEOUT_MS,
  );

  it(
    'passes over a byte-order mark',
    async () => {
      const [request = ''] = requests(1);
      expect((await lookup(`\uFEFF${request}\n`)).lines).toEqual([answerLine(request, 1)]);
    },
    START_TIMEOUT_MS,
  );

  it(
    'refuses a line over 64 MB by its number, and goes on',
    async () => {
      const [first = '', second = ''] = requests(2);
      const piece = Buffer.alloc(1e6, '[');
      const tooLong = Array.from({ length: 65 }, () => piece);
      const { lines, code } = await lookup(`${first}\n`, ...tooLong, `\n${second}\n`);
      expect(code).toBe(0);
      expect(lines).toHaveLength(3);
      expect([lines[0], lines[2]]).toEqual([answerLine(first, 1), answerLine(second, 3)]);
      expect(JSON.parse(lines[1] ?? '')).toEqual({
        id: null,
        ok: false,
        reason: 'malformed',
        line: 2,
        message: 'Line 2 is longer than 64 MB.',
        remedy: 'Keep each line within 64 MB.',
      });
    },
    START_TIMEOUT_MS,
  );

  it(
    'ends without a word where nobody reads on',
    async () => {
      const folder = await mkdtemp(join(tmpdir(), 'lookup-'));
      try {
        const [first = '', ...more] = requests(2000);
        const asked = join(folder, 'asked');
        await writeFile(asked, [first, ...more].join('\n'));
        const command = `{ npm run -s lookup < '${asked}'; echo "ended $?" >&2; } | head -n 1`;
        const { stdout, stderr } = await promisify(execFile)('sh', ['-c', command]);
        expect(stdout).toBe(`${answerLine(first, 1)}\n`);
        expect(stderr).toBe('ended 0\n');
      } finally {
        await rm(folder, { recursive: true });
      }
    },
    START_TIMEOUT_MS,
  );

  it(
    'answers nothing with nothing',
    async () => {
      expect(await lookup('')).toEqual({ lines: [], code: 0 });
    },
    START_TIMEOUT_MS,
  );
});
