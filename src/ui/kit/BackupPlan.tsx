import type { ImportMode, Incoming } from '../../state/backup/bringing-in';
import type { MendedField } from '../../state/backup/mended-field';
import type { ContentStore } from '../../store/contents';
import type { StoreChanges } from '../../store/store-port';
import { STORE_NOUNS, TOLD_STORES } from '../../words/store-words';
import type { Models } from '../app-models';
import { Choices } from '../controls/Choices';
import { changesNothing, changeWords, mendedWords, nameLines } from './backup-words';

const MODES: readonly (readonly [ImportMode, string])[] = [
  ['merge', 'Add to it'],
  ['replace', 'Replace it'],
];

const MODE_NOTES: Readonly<Record<ImportMode, string>> = {
  merge:
    'Nothing is removed. Where both have the same thing, the backup’s stands; a trial keeps the one that came further. Your shot and settings stay.',
  replace: 'Only what the backup has will be here. It can be undone.',
};

const PART_NOTE =
  'This is of one player alone, and is added to what is here. Nothing is removed; where both know the player, the later change stands.';

const BLANK_NOTE =
  'Nothing of yours is here yet, so all will be as the backup has it. It can be undone.';

type Planned = Extract<Incoming, { kind: 'planned' }>;

function noteOf({ plan, isPart, isBlankHere }: Planned): string {
  if (isPart) return PART_NOTE;
  return isBlankHere ? BLANK_NOTE : MODE_NOTES[plan.mode];
}

interface Props {
  readonly app: Models<'backup'>;
  readonly planned: Planned;
  onLeave(): void;
}

/** What a file would do to each kind of thing, and the choice of doing it. */
export function BackupPlan({ app, planned, onLeave }: Props) {
  const { plan, isPart, isBlankHere, mended, canBeDone } = planned;
  const { into } = app.backup;
  return (
    <div class="backup-plan">
      {!isPart && !isBlankHere && (
        <Choices
          label="With what is here"
          isLabelShown
          items={MODES.map(([value, content]) => ({ value, content }))}
          isChosen={(mode) => mode === into.mode.value}
          onChoose={into.setMode}
        />
      )}
      <p class="place-note">{noteOf(planned)}</p>
      <ul class="backup-changes">
        {TOLD_STORES.map((kind) => (
          <KindRow key={kind} kind={kind} changes={plan.changes[kind]} />
        ))}
      </ul>
      <Mended fields={mended} />
      <div class="backup-actions">
        {canBeDone && !changesNothing(plan.changes) && (
          <button type="button" class="button button-main" onClick={() => void into.bringIn()}>
            Bring it in
          </button>
        )}
        <button type="button" class="button" onClick={onLeave}>
          Leave it
        </button>
      </div>
    </div>
  );
}

/** One kind; its names are told on demand. */
function KindRow({ kind, changes }: { kind: ContentStore; changes: StoreChanges }) {
  const words = changeWords(kind, changes);
  if (words === '') return null;
  const told = (
    <>
      <b>{STORE_NOUNS[kind].all}:</b> {words}
    </>
  );
  if (kind === 'desk') return <li class="backup-row">{told}</li>;
  return (
    <li>
      <details>
        <summary class="backup-row">{told}</summary>
        {nameLines(kind, changes).map((line) => (
          <p key={line}>{line}</p>
        ))}
      </details>
    </li>
  );
}

/** More lines than anyone reads. */
const MOST_TOLD = 100;

/** What could not be taken as it was, and what stands there instead. */
function Mended({ fields }: { fields: readonly MendedField[] }) {
  if (fields.length === 0) return null;
  return (
    <details class="backup-mended">
      <summary class="backup-row">
        {fields.length === 1 ? '1 entry' : `${fields.length} entries`} had to be mended
      </summary>
      <p>The file’s own stays beside it, set aside.</p>
      {fields.slice(0, MOST_TOLD).map((field, index) => (
        <p key={index}>{mendedWords(field)}</p>
      ))}
      {fields.length > MOST_TOLD && <p>And {fields.length - MOST_TOLD} more.</p>}
    </details>
  );
}
