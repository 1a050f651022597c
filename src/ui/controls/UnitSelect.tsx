import './UnitSelect.css';

interface Props<U extends string> {
  readonly label: string;
  readonly value: U;
  readonly options: readonly (readonly [U, string])[];
  onChoose(unit: U): void;
}

/** Chooses a unit; the choice is remembered by whoever gets it. */
export function UnitSelect<U extends string>({ label, value, options, onChoose }: Props<U>) {
  return (
    <select
      class="unit-select"
      aria-label={label}
      value={value}
      onChange={(event) => {
        const chosen = options.find(([unit]) => unit === event.currentTarget.value);
        if (chosen) onChoose(chosen[0]);
      }}
    >
      {options.map(([unit, text]) => (
        <option key={unit} value={unit}>
          {text}
        </option>
      ))}
    </select>
  );
}
