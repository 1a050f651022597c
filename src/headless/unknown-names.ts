import { type Fields, fieldsOf } from './json-fields';

/** The names an object may have, by the dotted path to it; a list's items are at `list[]`. */
export type KnownNames = Readonly<Record<string, readonly string[]>>;

/** The path to an object: as it is told, and as it is known. */
interface Way {
  readonly told: string;
  readonly known: string;
}

const ROOT: Way = { told: '', known: '' };

/** Names that mean nothing, dotted where they are nested: most likely slips of the pen. */
export function unknownNames(fields: Fields, known: KnownNames, way: Way = ROOT): string[] {
  return Object.entries(fields).flatMap(([name, value]) => {
    const at = { told: joined(way.told, name), known: joined(way.known, name) };
    if (!known[way.known]?.includes(name)) return [at.told];
    if (at.known in known) return unknownNames(fieldsOf(value), known, at);
    return `${at.known}[]` in known ? unknownInList(value, known, at) : [];
  });
}

function unknownInList(list: unknown, known: KnownNames, at: Way): string[] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((item, index) =>
    unknownNames(fieldsOf(item), known, {
      told: `${at.told}[${index}]`,
      known: `${at.known}[]`,
    }),
  );
}

function joined(path: string, name: string): string {
  return path === '' ? name : `${path}.${name}`;
}
