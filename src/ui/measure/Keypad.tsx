import { useEffect } from 'preact/hooks';
import { TAPE_UNITS } from '../../units/tape-unit';
import { UnitSelect } from '../controls/UnitSelect';
import type { EntryWord } from './keypad-draft';
import type { Entry } from './use-entry';
import { WAY_ARROWS, WayWord } from './WayWord';
import './Keypad.css';

interface Props {
  readonly entry: Entry;
  /** Goes over to tapping; null where that is not asked for. */
  readonly onTap: (() => void) | null;
}

const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '0', '.'] as const;

/** A figure, huge, and keys for a thumb. A keyboard's own digits do as well. */
export function Keypad({ entry, onTap }: Props) {
  useTypedKeys(entry);
  const { spec, draft } = entry;
  return (
    <div class="keypad">
      <div class="keypad-figure">
        <output class="keypad-text" aria-label="Figure">
          {draft.figure === '' ? <span class="keypad-blank">0</span> : <b>{draft.figure}</b>}{' '}
          <span class="keypad-unit">
            {draft.unit !== 's' && spec.units.length === 1 && draft.unit}
            {draft.unit === 's' && 'seconds'} <WayWord word={draft.word} />
          </span>
        </output>
        {spec.units.length > 1 && (
          <UnitSelect
            label="Unit"
            value={draft.unit}
            options={spec.units.map((unit) => [unit, unitName(unit)] as const)}
            onChoose={entry.setUnit}
          />
        )}
        {onTap && (
          <button type="button" class="button" onClick={onTap}>
            Tap instead
          </button>
        )}
      </div>
      <div class="keypad-keys">
        <div class="keypad-digits">
          {DIGITS.map((key) => (
            <button
              key={key}
              type="button"
              class={key === '0' ? 'button key is-wide' : 'button key'}
              onClick={() => entry.press(key)}
            >
              {key}
            </button>
          ))}
        </div>
        <div class="keypad-side">
          <button
            type="button"
            class="button key"
            aria-label="Delete a digit"
            onClick={() => entry.press('delete')}
          >
            ⌫
          </button>
          {spec.ways?.map((way) => (
            <button
              key={way}
              type="button"
              class="button key key-way"
              aria-pressed={draft.word === way}
              onClick={() => entry.choose(way)}
            >
              <span aria-hidden="true">{WAY_ARROWS[way]}</span> {way}
            </button>
          ))}
          <button type="button" class="button key key-enter" onClick={entry.submit}>
            <span aria-hidden="true">✓</span> Enter
          </button>
        </div>
      </div>
    </div>
  );
}

function unitName(unit: Entry['draft']['unit']): string {
  return unit === 's' ? 'seconds' : TAPE_UNITS[unit].symbol;
}

const KEY_WORDS: Readonly<Record<string, EntryWord>> = { l: 'left', r: 'right', '-': 'back' };

/** Keys that a hardware keyboard sends, as long as no field of its own has them. */
function useTypedKeys(entry: Entry): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const target = event.target instanceof Element ? event.target : null;
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (target?.closest('input, select')) return;
      const isOnButton = target !== null && target.closest('button') !== null;
      if (handle(entry, event.key, isOnButton)) event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
}

/** Whether the key meant something. Enter on a button presses that button. */
function handle(entry: Entry, key: string, isOnButton: boolean): boolean {
  if (/^[\d.,]$/.test(key)) entry.press(key === ',' ? '.' : key);
  else if (key === 'Backspace') entry.press('delete');
  else if (key === 'Enter' && !isOnButton) entry.submit();
  else return choosesWay(entry, key);
  return true;
}

function choosesWay(entry: Entry, key: string): boolean {
  const wanted = KEY_WORDS[key.toLowerCase()];
  const ways: readonly EntryWord[] = entry.spec.ways ?? [];
  const word = key === '-' ? ways[0] : ways.find((way) => way === wanted);
  if (word === undefined) return false;
  entry.choose(word);
  return true;
}
