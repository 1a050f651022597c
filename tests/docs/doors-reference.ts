import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** The reference of the doors, as it stands. */
export const DOORS = readFileSync('src/headless/README.md', 'utf8');

/** The commands that a text shows, in order. */
export const commandsIn = (text: string) =>
  [...text.matchAll(/```sh\n([\s\S]*?)```/g)].map(([, command = '']) => command.trim());

/** The commands of the doors' reference. */
export const COMMANDS = commandsIn(DOORS);

/** The names in the first column of the reference's table under a heading cell. */
export function namesUnder(heading: string): string[] {
  const table = DOORS.slice(DOORS.indexOf(`| ${heading} |`)).split('\n\n')[0] ?? '';
  const cells = table
    .split('\n')
    .slice(2)
    .map((row) => row.split('|')[1] ?? '');
  return cells.flatMap((cell) => [...cell.matchAll(/`(\w+)`/g)].map(([, name = '']) => name));
}

/** What a command prints, run as it stands. */
export function printedBy(command: string) {
  return JSON.parse(execFileSync('sh', ['-c', command], { encoding: 'utf8' }));
}

/** The first command shown for a door: what it asks, and what it prints. */
export function firstOf(door: string) {
  const [command = ''] = COMMANDS.filter((line) => line.includes(`run -s ${door}`));
  return { printed: printedBy(command), asked: JSON.parse(/'(.*)'/.exec(command)?.[1] ?? '') };
}

/** The fields of an answer, its number apart. */
export const fieldsOf = (answer: object) => Object.keys(answer).filter((key) => key !== 'id');
