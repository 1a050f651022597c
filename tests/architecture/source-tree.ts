import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { parseSync } from 'vite';

/** One import or re-export, as written. */
export interface Import {
  readonly specifier: string;
  /** Only types cross it; it is gone in what runs. */
  readonly typesOnly: boolean;
}

export interface SourceFile {
  /** From the project's root, with slashes: `src/engine/direct/shot.ts`. */
  readonly path: string;
  readonly text: string;
  /** The text with comments blanked out. */
  readonly code: string;
  /** Those that come late among them. */
  readonly imports: readonly Import[];
  /** Specifiers of `export … from`, which makes a file a second door to another's content. */
  readonly reExports: readonly string[];
}

/** All files under a folder, as paths from the project's root. */
export function listFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => posix.join(entry.parentPath.replaceAll('\\', '/'), entry.name))
    .sort();
}

/** Every script under a folder, parsed. */
export function readSources(folder: string): SourceFile[] {
  return listFiles(folder)
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => parseSource(path, readFileSync(path, 'utf8')));
}

/** @throws Error where the text is not a TypeScript module. */
export function parseSource(path: string, text: string): SourceFile {
  const parsed = parseSync(path, text);
  if (parsed.errors.length > 0) throw new Error(`${path}: ${parsed.errors[0]?.message}`);
  const { staticImports, staticExports, dynamicImports } = parsed.module;

  const imports = staticImports.map(({ moduleRequest, entries }) => ({
    // What follows a question mark tells the bundler how to take the file.
    specifier: moduleRequest.value.replace(/\?.*$/, ''),
    typesOnly: entries.length > 0 && entries.every(({ isType }) => isType),
  }));
  const late = dynamicImports.flatMap(({ moduleRequest: { start, end } }) => {
    const named = /^(['"])(.*)\1$/.exec(text.slice(start, end));
    // An address that is worked out is no file that could be looked up.
    return named ? [{ specifier: named[2] ?? '', typesOnly: false }] : [];
  });
  const reExports = staticExports.flatMap(({ entries }) =>
    entries.flatMap(({ moduleRequest }) => moduleRequest?.value ?? []),
  );
  return {
    path,
    text,
    code: withoutComments(text, parsed.comments),
    imports: [...imports, ...late],
    reExports,
  };
}

function withoutComments(
  text: string,
  comments: readonly { start: number; end: number }[],
): string {
  let code = '';
  let from = 0;
  for (const { start, end } of comments) {
    code += text.slice(from, start) + text.slice(start, end).replace(/\S/g, ' ');
    from = end;
  }
  return code + text.slice(from);
}
