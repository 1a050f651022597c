import { computed, type ReadonlySignal } from '@preact/signals';
import { directCut } from '../../engine/goal/goal';
import type { Stroke } from '../../engine/stroke/stroke';
import { MOST_TRIES } from '../../store/parse-drill';
import { isSame } from '../../store/same-value';
import type { KeptDrill, SavedPosition } from '../../store/saved-position';
import { copyName } from '../../store/shelf-changes';
import { CHOOSE_PROBLEMS } from '../../words/choose-problems';
import { crowded } from '../crowded';
import { typedName } from '../typed-name';
import type { ChooseModel } from './choose-model';
import type { KeptPositions } from './kept-positions';
import type { LookedAt } from './looked-at';
import type { WithWay } from './way-to-ask';

export type DrillEdits = Pick<
  ChooseModel,
  'saved' | 'drills' | 'wayToKeep' | 'keptAs' | 'keepDrill' | 'logTry' | 'takeBackTry'
>;

export interface DrillEditsPorts {
  readonly kept: KeptPositions;
  /** The position as it lies on the table. */
  readonly open: ReadonlySignal<SavedPosition>;
  /** Null where there is none, or the balls lie otherwise since. */
  readonly lookedAt: ReadonlySignal<LookedAt | null>;
  readonly now: () => number;
  readonly newId: () => string;
}

/** Ways kept to be played again, beside the positions; every change is kept at once. */
export function createDrillEdits(ports: DrillEditsPorts): DrillEdits {
  const { kept, open, lookedAt, now, newId } = ports;
  const drills = computed(() => kept.all.value.filter(({ drill }) => drill));
  const wayToKeep = computed(
    (): WithWay | null => lookedAt.value && asKept(open.value, lookedAt.value),
  );
  const keptAs = computed(() => {
    const way = lookedAt.value;
    if (way === null) return null;
    // Kept once more it would be the same.
    const same = drills.value.find((one) =>
      isSame(one, { ...one, ...asKept(open.value, way, one.drill), zone: one.zone }),
    );
    return same?.id ?? null;
  });
  return {
    saved: computed(() => kept.all.value.filter(({ drill }) => !drill)),
    drills,
    wayToKeep,
    keptAs,
    keepDrill(name) {
      const way = wayToKeep.peek();
      if (way === null) return { ok: false, problem: CHOOSE_PROBLEMS.outOfDate };
      const before = keptAs.peek();
      if (before !== null) return { ok: true, id: before };
      const problem = crowded(kept.all.peek());
      if (problem !== null) return { ok: false, problem };
      const named = typedName(name);
      if (!named.ok) return named;
      const names = kept.all.peek().map((one) => one.name);
      const id = newId();
      const unused = names.includes(named.name) ? copyName(named.name, names) : named.name;
      kept.put({ ...way, id, name: unused, origin: 'by-hand', changedAtMs: now() });
      return { ok: true, id };
    },
    logTry(id, playerId, went) {
      const row = kept.find(id);
      if (!row?.drill) return false;
      const one = { playerId, atMs: now(), went };
      const tries = [...row.drill.tries, one].slice(-MOST_TRIES);
      kept.put({ ...row, drill: { ...row.drill, tries }, changedAtMs: now() });
      return true;
    },
    takeBackTry(id, playerId) {
      const row = kept.find(id);
      if (!row?.drill) return;
      const last = row.drill.tries.filter((one) => one.playerId === playerId).at(-1);
      const tries = row.drill.tries.filter((one) => one !== last);
      kept.put({ ...row, drill: { ...row.drill, tries }, changedAtMs: now() });
    },
  };
}

/** What is kept of a way, on the balls as they lie; with the tries and, where alike, the stroke that it had. */
function asKept(
  { lengthM, widthM, balls }: SavedPosition,
  way: LookedAt,
  was?: KeptDrill | null,
): WithWay {
  const { kind, ball, pocket, via } = way.goal;
  const stroke = was && isStruckAlike(was.stroke, way.stroke) ? was.stroke : way.stroke;
  const drill = { tries: [], ...was, kind, via, stroke };
  return { lengthM, widthM, balls, goal: directCut(ball, pocket), zone: null, drill };
}

/** Nobody strikes so fine: rad, shares of the radius, m/s. */
const AS_STRUCK = 0.005;

function isStruckAlike(one: Stroke, other: Stroke): boolean {
  const parts = Object.keys(one) as (keyof Stroke)[];
  return parts.every((part) => Math.abs(one[part] - other[part]) < AS_STRUCK);
}
