import { parseNumber } from '../../units/parse-number';
import type { Parsed } from '../../units/parsed';
import type { TapeUnit } from '../../units/tape-unit';

/** What the figure on a keypad is in: `s` for a time. */
export type EntryUnit = TapeUnit | 's';

/** Which way a reading goes, or how it came about; empty where nothing was said yet. */
export type EntryWord = 'left' | 'right' | 'on' | 'back' | 'tapped' | '';

/** What stands on a keypad: figure, unit and way. */
export interface KeypadDraft {
  /** As typed, such as "1." */
  readonly figure: string;
  readonly unit: EntryUnit;
  readonly word: EntryWord;
  /** Put there whole, as by a touch of the rail: the next digit begins anew. */
  readonly isWhole?: boolean;
}

const UNITS: readonly EntryUnit[] = ['mm', 'cm', 'in', 'm', 'diamonds', 's'];
const WORDS: readonly EntryWord[] = ['left', 'right', 'on', 'back', 'tapped'];
const NO_FIGURE = '–';
const WHOLE = 'whole';
/** More digits than any reading has. */
const MOST_LETTERS = 7;

/** As it is kept: "0.75 diamonds left". */
export function draftText({ figure, unit, word, isWhole }: KeypadDraft): string {
  const told = figure === '' ? NO_FIGURE : figure;
  return `${told} ${unit} ${word}${isWhole ? ` ${WHOLE}` : ''}`.trimEnd();
}

/** Reads what was kept; a blank one in the given unit where it cannot be read. */
export function parseDraft(text: string | null, unit: EntryUnit): KeypadDraft {
  const [figure = '', unitText = '', wordText = '', whole] = (text ?? '').split(' ');
  return {
    figure: /^[\d.]{1,7}$/.test(figure) ? figure : '',
    unit: UNITS.find((name) => name === unitText) ?? unit,
    word: WORDS.find((name) => name === wordText) ?? '',
    ...(whole === WHOLE && { isWhole: true }),
  };
}

/** The draft after a key: a digit, the point, or `delete`. */
export function keyed({ isWhole, ...draft }: KeypadDraft, key: string): KeypadDraft {
  if (key === 'delete') {
    const { figure } = draft;
    return figure === '' ? { ...draft, word: '' } : { ...draft, figure: figure.slice(0, -1) };
  }
  const figure = isWhole ? '' : draft.figure;
  if (figure.length >= MOST_LETTERS) return draft;
  if (key === '.') {
    return figure.includes('.') ? draft : { ...draft, figure: figure === '' ? '0.' : `${figure}.` };
  }
  return { ...draft, figure: figure === '0' ? key : figure + key };
}

/** The figure as a number with the sign of its way: left and back are −. */
export function signedFigure({ figure, word }: KeypadDraft): Parsed<number> {
  const size = parseNumber(figure.replace(/\.$/, ''));
  if (!size.ok || size.value === 0) return size;
  return { ok: true, value: word === 'left' || word === 'back' ? -size.value : size.value };
}
