import { useComputed } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Models } from '../app-models';
import { useSettled } from '../use-settled';
import type { ChooseMode } from './choose-mode';
import { statusOf } from './status-words';

/** The line under the table; it is read out once it stands still. */
export function StatusLine({ app, mode }: { app: Models<'choose' | 'desk'>; mode: ChooseMode }) {
  const now = useRef(mode);
  now.current = mode;
  const read = () => statusOf(app.choose, now.current, app.desk.preferences.value);
  const settled = useSettled(useComputed(() => read().text));
  const { text, isProblem } = read();
  return (
    <div class={isProblem ? 'status-line has-problem' : 'status-line'}>
      <p>
        {isProblem && <span aria-hidden="true">⚠ </span>}
        {text}
      </p>
      <output class="visually-hidden">{settled.value}</output>
    </div>
  );
}
