import { readFileSync } from 'node:fs';
import { argv, exit } from 'node:process';
import { APP_FAULTS } from './app-faults';
import { ENGINE_FAULTS } from './engine-faults';
import { LINK_FAULTS } from './link-faults';
import type { PlantedFault } from './planted-fault';
import { type Failures, runCatchers, runWhole } from './run-catchers';
import { copyTree, type TreeCopy } from './tree-copy';

/**
 * Plants one fault after another in a copy of the project, and says which tests find it. Arguments
 * choose faults by a part of their file or of their reason; none chooses all. Fails where a fault
 * stays unfound, or is found only by tests that fail without it.
 */
const words = argv.slice(2);
const chosen = [...ENGINE_FAULTS, ...APP_FAULTS, ...LINK_FAULTS].filter(
  ({ file, why }) => words.length === 0 || words.some((word) => `${file} ${why}`.includes(word)),
);
const unplantable = chosen.filter(({ file, find }) => timesIn(file, find) !== 1);
for (const { file, find } of unplantable) {
  console.error(`${file} holds this ${timesIn(file, find)} times, not once: ${find}`);
}
if (unplantable.length > 0 || chosen.length === 0) exit(1);

const tree = await copyTree();
try {
  const found = new Map<PlantedFault, Failures>();
  for (const fault of chosen) {
    const failures = await tree.withFault(fault, () => firstFinders(tree, fault));
    found.set(fault, failures);
    tell(fault, failures);
  }
  const finders = new Set([...found.values()].flatMap((failures) => [...failures.keys()]));
  console.log('The same tests without a fault:');
  const sound = await runCatchers(tree.folder, [...finders]);
  for (const [catcher, names] of sound) console.log(`       ${catcher} fails: ${names.join(', ')}`);
  const unfound = [...found].filter(([, failures]) => !isFound(failures, sound));
  for (const [fault] of unfound) tell(fault, new Map());
  console.log(`${chosen.length - unfound.length} of ${chosen.length} planted faults were found`);
  process.exitCode = unfound.length > 0 ? 1 : 0;
} finally {
  await tree.remove();
}

function timesIn(file: string, text: string): number {
  return readFileSync(file, 'utf8').split(text).length - 1;
}

/** The first catcher that finds a fault; where none does, whatever does of all there is. */
async function firstFinders({ folder }: TreeCopy, fault: PlantedFault): Promise<Failures> {
  for (const catcher of fault.catchers) {
    const failures = await runCatchers(folder, [catcher], true);
    if (failures.size > 0) return failures;
    console.log(`${catcher} does not find what it should:`);
  }
  return runWhole(folder);
}

function tell({ file, why }: PlantedFault, failures: Failures): void {
  console.log(`${failures.size > 0 ? 'found  ' : 'UNFOUND'} ${file}: ${why}`);
  for (const [catcher, [first = 'it does not run', ...others]] of failures) {
    const more = others.length > 0 ? ` and ${others.length} more` : '';
    console.log(`       by ${catcher}: ${first}${more}`);
  }
}

/** Whether a test failed that passes without the fault. */
function isFound(failures: Failures, sound: Failures): boolean {
  return [...failures].some(([catcher, names]) => {
    const unsound = sound.get(catcher);
    return unsound === undefined || names.some((name) => !unsound.includes(name));
  });
}
