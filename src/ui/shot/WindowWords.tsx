import type { FieldName } from '../../state/shot-fields';
import type { Models } from '../app-models';
import { fieldWindowWords, isRoomStale } from './room-of-field';
import { endsInWords } from './room-words';

interface Props {
  readonly app: Models<'shot' | 'room'>;
  readonly name: FieldName;
  /** Whether to say what the ends do, without figures. */
  readonly isShort?: boolean;
}

/** The room an input leaves, under its control; greyed while that is being worked out. */
export function WindowWords({ app, name, isShort = false }: Props) {
  const words = isShort ? fieldWindowWords(app, name, endsInWords) : fieldWindowWords(app, name);
  return (
    <p class={isRoomStale(app) ? 'window-words is-stale' : 'window-words'}>
      {words && !isShort && 'goes '}
      {words}
    </p>
  );
}
