import type { LateParts, Models } from '../app-models';
import { LatePart } from '../LatePart';
import { AskLine } from '../player/AskLine';
import { useKeptFocus } from '../use-kept-focus';
import { AnswerBlock } from './AnswerBlock';
import { ComparisonLine } from './ComparisonLine';
import { INPUT_NAMES, InputTiles } from './InputTiles';
import { KitStrip } from './KitStrip';
import { OverheadStrip } from './OverheadStrip';
import { ShooterDiagram } from './ShooterDiagram';
import { ShotActions } from './ShotActions';
import type { InputName } from './tile-words';
import { WarningList } from './WarningList';
import './ShotPlace.css';

type ShotPlaceModels = Models<
  'shot' | 'room' | 'player' | 'kit' | 'measure' | 'desk' | 'router' | 'news'
>;

interface Props {
  readonly app: ShotPlaceModels;
  readonly late: Pick<LateParts, 'after' | 'control' | 'hand' | 'question' | 'why'>;
}

/** Where do I point? The picture, the answer, and what is asked. */
export function ShotPlace({ app, late }: Props) {
  const { panel } = app.router.route.value;
  const open = INPUT_NAMES.find((name) => name === panel) ?? null;
  // Both are told by one late part.
  const isWhyOpen = panel === 'why' || panel === 'coach';
  const place = useKeptFocus(panel);
  return (
    <main
      ref={place}
      tabIndex={-1}
      class={SHEETS.get(panel) ?? placeClass(open !== null, isWhyOpen)}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && panel !== '') app.router.close();
      }}
    >
      {panel === 'after' && (
        <LatePart part={late.after} reload={app.news.reload}>
          {(After) => <After />}
        </LatePart>
      )}
      {panel.endsWith('question') && (
        <LatePart part={late.question} reload={app.news.reload}>
          {(Question) => <Question app={app} />}
        </LatePart>
      )}
      {!SHEETS.has(panel) && <AimPage app={app} late={late} open={open} isWhyOpen={isWhyOpen} />}
    </main>
  );
}

/** What takes the whole place, and its look. */
const SHEETS: ReadonlyMap<string, string> = new Map([
  ['after', 'kit-place is-after is-open'],
  ['question', 'kit-place'],
  ['why/question', 'kit-place'],
]);

interface PageProps extends Props {
  readonly open: InputName | null;
  readonly isWhyOpen: boolean;
}

function AimPage({ app, late, open, isWhyOpen }: PageProps) {
  const { reload } = app.news;
  return (
    <>
      <h1 class="visually-hidden">Shot</h1>
      <KitStrip app={app} />
      <div class="shot-picture">
        <ShooterDiagram app={app} hand={late.hand} />
        <OverheadStrip app={app} hand={late.hand} />
      </div>
      <div class="shot-reading">
        <AnswerBlock app={app} />
        {!isWhyOpen && <WarningList app={app} />}
        <ComparisonLine app={app} />
      </div>
      <div class="shot-asking">
        {open === null && !isWhyOpen && <AskLine app={app} />}
        <ShotActions app={app} />
        {isWhyOpen ? (
          <LatePart part={late.why} reload={reload}>
            {(WhyPanel) => <WhyPanel app={app} />}
          </LatePart>
        ) : (
          <InputTiles app={app} open={open} />
        )}
        {open && (
          <LatePart part={late.control} reload={reload}>
            {(InputControl) => <InputControl app={app} name={open} />}
          </LatePart>
        )}
      </div>
    </>
  );
}

function placeClass(isControlOpen: boolean, isWhyOpen: boolean): string {
  if (isWhyOpen) return 'shot-place is-explained';
  return isControlOpen ? 'shot-place is-open' : 'shot-place';
}
