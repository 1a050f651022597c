import type { LegalRule } from '../../../engine/goal/legal';
import type { ChooseModel } from '../../../state/choose/choose-model';
import { ballLabel } from '../table-words';

const RULES: readonly (readonly [Exclude<LegalRule, readonly number[]>, string])[] = [
  ['any', 'any'],
  ['lowest', 'the lowest'],
  ['low', 'low, 1–7'],
  ['high', 'high, 9–15'],
];

/** What the cue ball may touch first: a rule, or balls that are picked. */
export function LegalTools({ choose }: { choose: ChooseModel }) {
  const { balls, legal = 'any' } = choose.open.value;
  const numbers = balls.flatMap(({ name }) => (name === 'cue' ? [] : [name])).sort((a, b) => a - b);
  if (numbers.length < 2) return null;
  const picked = typeof legal === 'string' ? null : legal;
  return (
    <>
      <fieldset class="legal-rules">
        <legend>May be hit first</legend>
        {RULES.map(([rule, label]) => (
          <button
            key={rule}
            type="button"
            class="button"
            aria-pressed={legal === rule}
            onClick={() => choose.allow(rule)}
          >
            {label}
          </button>
        ))}
        <button
          type="button"
          class="button"
          aria-pressed={picked !== null}
          onClick={() => picked ?? choose.allow(numbers)}
        >
          pick…
        </button>
      </fieldset>
      {picked && <Picked choose={choose} numbers={numbers} picked={picked} />}
    </>
  );
}

interface PickedProps {
  readonly choose: ChooseModel;
  readonly numbers: readonly number[];
  readonly picked: readonly number[];
}

/** The balls on the table, each to be let or not. */
function Picked({ choose, numbers, picked }: PickedProps) {
  const others = (name: number) => picked.filter((one) => one !== name);
  const toggle = (name: number) =>
    choose.allow(
      picked.includes(name) ? others(name) : [...picked, name].sort((one, other) => one - other),
    );
  return (
    <fieldset class="ball-palette">
      <legend class="visually-hidden">Balls that may be hit first</legend>
      {numbers.map((name) => (
        <button
          key={name}
          type="button"
          class="palette-ball is-laid"
          aria-label={`${ballLabel(name)} may be hit first`}
          aria-pressed={picked.includes(name)}
          onClick={() => toggle(name)}
        >
          <span>{name}</span>
        </button>
      ))}
    </fieldset>
  );
}
