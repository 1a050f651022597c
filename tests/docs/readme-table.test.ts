import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const DOORS = readFileSync('src/headless/README.md', 'utf8');
const COMMANDS = [...DOORS.matchAll(/```sh\n([\s\S]*?)```/g)].map(([, text = '']) => text.trim());
const START_TIMEOUT_MS = 300_000;

/** The names in the first column of the table under a heading cell. */
function namesUnder(heading: string): string[] {
  const table = DOORS.slice(DOORS.indexOf(`| ${heading} |`)).split('\n\n')[0] ?? '';
  const cells = table
    .split('\n')
    .slice(2)
    .map((row) => row.split('|')[1] ?? '');
  return cells.flatMap((cell) => [...cell.matchAll(/`(\w+)`/g)].map(([, name = '']) => name));
}

function printedBy(door: string) {
  const [command = ''] = COMMANDS.filter((line) => line.includes(`run -s ${door}`));
  const printed = JSON.parse(execFileSync('sh', ['-c', command], { encoding: 'utf8' }));
  return { printed, asked: JSON.parse(/'(.*)'/.exec(command)?.[1] ?? '') };
}

const keys = (value: object) => Object.keys(value).filter((key) => key !== 'id');

describe('the reference of the doors', () => {
  it(
    'shows a log that is learnt from when run as it stands, and names its fields',
    () => {
      const { printed, asked } = printedBy('learn');
      expect(printed).toMatchObject({ id: 6, ok: true });
      expect(printed.unknown).toBeUndefined();
      expect(namesUnder('field of what is learnt').sort()).toEqual(keys(printed).sort());
      expect(namesUnder('field of a log')).toEqual(expect.arrayContaining(Object.keys(asked)));
      const logged = asked.shots.flatMap((shot: object) => Object.keys(shot));
      expect(namesUnder('field of a logged shot')).toEqual(expect.arrayContaining(logged));
    },
    START_TIMEOUT_MS,
  );

  it(
    'shows a comparison that answers when run as it stands, and names its fields',
    () => {
      const { printed, asked } = printedBy('options');
      expect(printed).toMatchObject({ id: 4, ok: true });
      expect(printed.unknown).toBeUndefined();
      expect(namesUnder('field of a comparison').sort()).toEqual(keys(printed).sort());
      expect(namesUnder('field of a way').sort()).toEqual(keys(printed.ways[0]).sort());
      expect(namesUnder('field of a position')).toEqual(expect.arrayContaining(Object.keys(asked)));
    },
    START_TIMEOUT_MS,
  );

  it(
    'shows a stroke that plays when run as it stands, and names its fields',
    () => {
      const { printed, asked } = printedBy('play');
      expect(printed).toMatchObject({ id: 5, ok: true });
      expect(printed.unknown).toBeUndefined();
      expect(namesUnder('field of a play').sort()).toEqual(keys(printed).sort());
      expect(namesUnder('field of a stroke to play')).toEqual(
        expect.arrayContaining(Object.keys(asked.stroke)),
      );
    },
    START_TIMEOUT_MS,
  );
});
