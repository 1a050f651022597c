import { useEffect, useRef } from 'preact/hooks';
import type { EditResult } from '../../state/edit-result';
import type { SavedPosition } from '../../store/saved-position';
import { NameField } from '../kit/NameField';
import './PositionsPanel.css';

interface NameProps {
  readonly position: SavedPosition;
  /** Puts the field away; says why not where the name cannot be used. */
  onRename(name: string): EditResult;
}

/** A name to type, as many lines high as it needs. */
export function PositionName({ position: { name }, onRename }: NameProps) {
  const area = useRef<HTMLTextAreaElement>(null);
  useEffect(() => area.current?.select(), []);
  return (
    <NameField class="record-name position-name" onRename={onRename}>
      {(field, rename) => (
        <textarea
          {...field}
          ref={area}
          rows={1}
          autocomplete="off"
          enterkeyhint="done"
          value={name}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            event.currentTarget.blur();
          }}
          onBlur={(event) => rename(event.currentTarget.value.replace(/\s+/g, ' '))}
        />
      )}
    </NameField>
  );
}
