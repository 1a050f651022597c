import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { EditResult } from '../../state/edit-result';
import type { SavedPosition } from '../../store/saved-position';
import type { Models } from '../app-models';
import { NameField } from '../kit/NameField';
import './PositionsPanel.css';

/** Renaming one of a list of positions: what is done behind its button, and the field while it is. */
export function useNaming(choose: Models<'choose'>['choose'], position: SavedPosition) {
  const isNaming = useSignal(false);
  const onTap = () => {
    isNaming.value = !isNaming.peek();
  };
  return {
    rename: { label: 'Rename', isExpanded: isNaming.value, onTap },
    field: isNaming.value && (
      <PositionName
        position={position}
        onRename={(next) => {
          const renamed = choose.rename(position.id, next);
          if (renamed.ok) isNaming.value = false;
          return renamed;
        }}
      />
    ),
  };
}

interface NameProps {
  readonly position: SavedPosition;
  /** Puts the field away; says why not where the name cannot be used. */
  onRename(name: string): EditResult;
}

/** A name to type, as many lines high as it needs. */
function PositionName({ position: { name }, onRename }: NameProps) {
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
