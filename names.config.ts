import type { Plugin } from 'vite';

const EXPORTED = /export\{([^{}]*)\}(?=;?\s*(?:\/\/.*)?\s*$)/;
const IMPORTED = /import\{([^{}]*)\}from"\.\/([^"]+)"/g;
/** What comes late: the whole script, of which one thing is taken. */
const IMPORTED_LATE = /import\(`\.\/([^`]+)`\)(?:\.then\((\w+)=>\2\.([\w$]+)\))?/g;

/** Names that stand behind other names: `a as b`, or `a` behind itself. */
const pairsOf = (list: string) =>
  list.split(',').map((pair): readonly [was: string, is: string] => {
    const [was = '', is = was] = pair.trim().split(' as ');
    return [was, is];
  });

const backwards = (pair: string) => [...pair.replace(/ .*/, '')].reverse().join('');
/** Those that end alike stand together, which packs better. */
const byEnd = (one: string, other: string) => (backwards(one) < backwards(other) ? -1 : 1);

/**
 * Has scripts hand each other things by the names that these have within the script they come from: the
 * bundler gives them others, and says both, for all of three hundred and fifty.
 */
export function ownNames(): Plugin {
  return {
    name: 'own-names',
    apply: 'build',
    // What is done below is done after scripts are named by what is in them.
    augmentChunkHash: () => 'own-names 1',
    generateBundle(_, bundle) {
      const chunks = Object.values(bundle).filter((one) => one.type === 'chunk');
      const own = new Map<string, ReadonlyMap<string, string>>();
      for (const chunk of chunks) {
        chunk.code = chunk.code.replace(EXPORTED, (_all, list: string) => {
          const names = new Map(pairsOf(list).map(([within, without]) => [without, within]));
          own.set(chunk.fileName.replace(/.*\//, ''), names);
          return `export{${[...new Set(names.values())].sort().join()}}`;
        });
      }
      const within = (from: string, without: string) => {
        const name = own.get(from)?.get(without);
        if (name === undefined) throw new Error(`${from} hands out no ${without}.`);
        return name;
      };
      for (const chunk of chunks) {
        chunk.code = chunk.code
          .replace(IMPORTED, (_all, list: string, from: string) => {
            const pairs = pairsOf(list).map(([without, here]) => {
              const name = within(from, without);
              return name === here ? here : `${name} as ${here}`;
            });
            return `import{${pairs.sort(byEnd).join()}}from"./${from}"`;
          })
          .replace(
            IMPORTED_LATE,
            (_all, from: string, script = '', without = '') =>
              `import(\`./${from}\`).then(${script}=>${script}.${within(from, without)})`,
          );
      }
    },
  };
}
