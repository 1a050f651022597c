import { existsSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { APP_FAULTS } from '../faults/app-faults';
import { ENGINE_FAULTS } from '../faults/engine-faults';
import { LINK_FAULTS } from '../faults/link-faults';

const FAULTS = [...ENGINE_FAULTS, ...APP_FAULTS, ...LINK_FAULTS];
const SCRIPTS = Object.keys(JSON.parse(readFileSync('package.json', 'utf8')).scripts);

it.each(FAULTS)('can be planted still, and has something that may find it: $why', (fault) => {
  const { file, find, replace, catchers } = fault;
  expect(readFileSync(file, 'utf8').split(find)).toHaveLength(2);
  expect(replace).not.toBe(find);
  expect(catchers.length).toBeGreaterThan(0);
  const unknown = catchers.filter((name) => !SCRIPTS.includes(name) && !existsSync(name));
  expect(unknown).toEqual([]);
});
