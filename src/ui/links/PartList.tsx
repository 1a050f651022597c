import type { Wanted } from '../../state/links/links-model';
import type { SharedPart } from './shared-parts';

interface Props {
  readonly parts: readonly SharedPart[];
  /** Which of them are marked; left out, none can be. */
  readonly wanted?: Wanted;
  onTap?(part: keyof Wanted): void;
}

/** What a link holds, each drawn small and in words. */
export function PartList({ parts, wanted, onTap }: Props) {
  const Row = onTap ? 'button' : 'div';
  return (
    <ul class="record-list">
      {parts.map(({ part, title, lines, picture }) => (
        <li key={part} class={wanted?.[part] ? 'record-row is-chosen' : 'record-row'}>
          <Row
            class="record-choose has-picture link-part"
            aria-pressed={wanted?.[part]}
            onClick={onTap && (() => onTap(part))}
          >
            {picture}
            <span class="record-words">
              <b>
                {wanted?.[part] && <span aria-hidden="true">● </span>}
                {title}
              </b>
              {lines.map((line) => (
                <span key={line} class="record-origin">
                  {' '}
                  {line}
                </span>
              ))}
            </span>
          </Row>
        </li>
      ))}
    </ul>
  );
}
