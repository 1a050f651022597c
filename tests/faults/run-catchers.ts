import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';

/** What of a run failed, by test file or script: the names of the tests. */
export type Failures = ReadonlyMap<string, readonly string[]>;

/** The part of vitest's report that is read. */
interface Report {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

const NEEDS_BUILD = /^tests\/(build|e2e|engines)\//;
/** A fault may have the engine go round for ever; nothing else takes so long. */
const PATIENCE_MS = 1_800_000;

/**
 * Runs test files and scripts within a folder.
 *
 * @param bail stops at the first test that fails
 * @throws Error where the folder does not build
 */
export async function runCatchers(
  folder: string,
  catchers: readonly string[],
  bail = false,
): Promise<Failures> {
  const files = catchers.filter((catcher) => catcher.startsWith('tests/'));
  const failed = new Map<string, readonly string[]>();
  for (const script of catchers.filter((catcher) => !files.includes(catcher))) {
    if (!(await run(folder, 'npm', ['run', '-s', script]))) failed.set(script, [script]);
  }
  if (files.length === 0) return failed;
  if (files.some((file) => NEEDS_BUILD.test(file))) await build(folder);
  for (const [file, names] of await runTests(folder, files, bail)) failed.set(file, names);
  return failed;
}

/** Everything there is: types, unused code and every test. */
export async function runWhole(folder: string): Promise<Failures> {
  const scripts = await runCatchers(folder, ['typecheck', 'dead']);
  if (scripts.size > 0) return scripts;
  await build(folder);
  return runTests(folder, [], true);
}

async function build(folder: string): Promise<void> {
  if (!(await run(folder, 'npm', ['run', '-s', 'build']))) throw new Error('it does not build');
}

/** @param files all of them where none is named */
async function runTests(
  folder: string,
  files: readonly string[],
  bail: boolean,
): Promise<Failures> {
  const out = await mkdtemp(join(tmpdir(), 'leeway-report-'));
  try {
    const report = join(out, 'report.json');
    const how = ['--reporter=json', `--outputFile=${report}`, `--bail=${bail ? 1 : 0}`];
    await run(folder, 'npx', ['vitest', 'run', ...how, ...files]);
    const { testResults } = JSON.parse(await readFile(report, 'utf8')) as Report;
    const missing = files.filter((file) => !testResults.some(({ name }) => name.endsWith(file)));
    if (missing.length > 0) throw new Error(`there is no ${missing.join(', no ')}`);
    return new Map(
      testResults
        .filter(({ status }) => status !== 'passed')
        .map(({ name, assertionResults }) => [
          relative(folder, name),
          assertionResults
            .filter(({ status }) => status === 'failed')
            .map(({ fullName }) => fullName),
        ]),
    );
  } finally {
    await rm(out, { recursive: true, force: true });
  }
}

/** Whether a command ends well. */
function run(folder: string, command: string, args: readonly string[]): Promise<boolean> {
  return new Promise((resolve) => {
    const options = { cwd: folder, timeout: PATIENCE_MS, maxBuffer: 2 ** 28 };
    execFile(command, args, options, (error) => resolve(error === null));
  });
}
