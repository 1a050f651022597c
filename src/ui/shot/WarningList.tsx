import type { Models } from '../app-models';
import { warningWords } from './warning-words';
import './WarningList.css';

/** Lines that fit over the tiles; the rest is told under Why. */
const SHOWN = 2;

/** What to know before playing this, the most pressing first. */
export function WarningList({ app, all = false }: { app: Models<'shot' | 'desk'>; all?: boolean }) {
  const warnings = app.shot.warnings.value;
  if (warnings.length === 0) return null;
  const { lengthUnit } = app.desk.preferences.value;
  const shown = all ? warnings : warnings.slice(0, SHOWN);
  const hidden = warnings.length - shown.length;
  return (
    <ul class="warning-list" aria-label="Warnings">
      {shown.map((warning, i) => (
        <li key={warning.kind}>
          <span class="warning-icon" aria-hidden="true">
            ▲
          </span>
          <span>
            {warningWords(warning, lengthUnit)}
            {hidden > 0 && i === SHOWN - 1 && ` And ${hidden} more under Why.`}
          </span>
        </li>
      ))}
    </ul>
  );
}
