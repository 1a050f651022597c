import type { ComponentChildren } from 'preact';
import type { Models } from '../app-models';
import { NumberRow, type NumberRowProps } from './NumberRow';
import { Picks } from './Picks';
import type { QuickPick } from './quick-picks';
import { ValueSlider } from './ValueSlider';
import { WindowWords } from './WindowWords';

interface Props extends Omit<NumberRowProps, 'model' | 'shownLabel'> {
  readonly app: Models<'shot' | 'room'>;
  readonly picks: readonly QuickPick[];
  /** Whether the stroke has room in it, to be told. */
  readonly hasWindow?: boolean;
  readonly children?: ComponentChildren;
}

/** One number: to press, to type, to drag or to pick. */
export function NumberControl({ app, picks, hasWindow = false, children, ...row }: Props) {
  const { name, label } = row;
  return (
    <div class="number-control">
      {children}
      <NumberRow model={app.shot} {...row} />
      <ValueSlider app={app} name={name} label={label} hasWindow={hasWindow} />
      {hasWindow && <WindowWords app={app} name={name} />}
      <Picks model={app.shot} name={name} label={label} picks={picks} />
    </div>
  );
}
