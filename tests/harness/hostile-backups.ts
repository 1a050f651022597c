import { sealed } from '../store/backup/resealed';
import { FORGED_LINES, LINE_DAMAGES, pick, TEXT_DAMAGES } from './damage-text';
import { twistTree } from './hostile-trees';
import type { Random } from './seeded-random';

const SEAL = /,"crc":"[0-9a-f]{8}"\}$/;

/** A file that someone made of a backup to see what breaks; three in four have sound checksums. */
export async function hostileBackup(text: string, random: Random): Promise<string> {
  if (random() < 0.25) return damaged(text, random);
  const open = text
    .split('\n')
    .slice(0, -2)
    .map((line) => line.replace(SEAL, ''));
  return await sealed(changed(open, random));
}

function damaged(text: string, random: Random): string {
  const times = 1 + Math.floor(random() * 3);
  let whole = text;
  for (let time = 0; time < times; time += 1) {
    whole = pick(random, Object.values(TEXT_DAMAGES))(whole, random);
  }
  return whole;
}

function changed(open: readonly string[], random: Random): readonly string[] {
  if (random() < 0.15) return moved(open, random);
  // The header one time in eight: most of what is behind it would never be read otherwise.
  const at = random() < 0.125 ? 0 : Math.floor(random() * open.length);
  const line = open[at] ?? '';
  const how = random() < 0.4 ? pick(random, Object.values(FORGED_LINES)) : twist;
  return open.with(at, how(line, random));
}

function moved(open: readonly string[], random: Random): readonly string[] {
  const lines = pick(random, Object.values(LINE_DAMAGES))(open, random);
  return lines.with(0, (lines[0] ?? '').replace(/"lines":\d+/, `"lines":${lines.length - 1}`));
}

/** A line that lacks its closing bracket, before and after. */
function twist(line: string, random: Random): string {
  const tree = JSON.parse(`${line}}`) as Record<string, unknown>;
  twistTree(tree, random);
  return JSON.stringify(tree).slice(0, -1);
}
