import type { Models } from '../app-models';
import { AfterShot } from '../log/AfterShot';
import { AskLine } from '../player/AskLine';
import { QuestionPanel } from '../player/QuestionPanel';
import { useKeptFocus } from '../use-kept-focus';
import { AnswerBlock } from './AnswerBlock';
import { ComparisonLine } from './ComparisonLine';
import { InputControl } from './InputControl';
import { INPUT_NAMES, InputTiles } from './InputTiles';
import { KitStrip } from './KitStrip';
import { OverheadStrip } from './OverheadStrip';
import { ShooterDiagram } from './ShooterDiagram';
import { ShotActions } from './ShotActions';
import type { InputName } from './tile-words';
import { WarningList } from './WarningList';
import { WhyPanel } from './WhyPanel';
import './ShotPlace.css';

type ShotPlaceModels = Models<
  'shot' | 'room' | 'player' | 'log' | 'kit' | 'measure' | 'desk' | 'router'
>;

/** Where do I point? The picture, the answer, and what is asked. */
export function ShotPlace({ app }: { app: ShotPlaceModels }) {
  const { panel } = app.router.route.value;
  const open = INPUT_NAMES.find((name) => name === panel) ?? null;
  const isWhyOpen = panel === 'why';
  const place = useKeptFocus(panel);
  return (
    <main
      ref={place}
      class={SHEETS.get(panel) ?? placeClass(open !== null, isWhyOpen)}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && panel !== '') app.router.close();
      }}
    >
      {panel === 'after' && <AfterShot app={app} asked={app.log.askShot()} />}
      {panel === 'question' && <QuestionPanel app={app} />}
      {!SHEETS.has(panel) && <AimPage app={app} open={open} isWhyOpen={isWhyOpen} />}
    </main>
  );
}

/** What takes the whole place, and its look. */
const SHEETS: ReadonlyMap<string, string> = new Map([
  ['after', 'kit-place is-after is-open'],
  ['question', 'kit-place'],
]);

interface PageProps {
  readonly app: ShotPlaceModels;
  readonly open: InputName | null;
  readonly isWhyOpen: boolean;
}

function AimPage({ app, open, isWhyOpen }: PageProps) {
  return (
    <>
      <h1 class="visually-hidden">Shot</h1>
      <KitStrip app={app} />
      <div class="shot-picture">
        <ShooterDiagram app={app} />
        <OverheadStrip app={app} />
      </div>
      <div class="shot-reading">
        <AnswerBlock app={app} />
        {!isWhyOpen && <WarningList app={app} />}
        <ComparisonLine app={app} />
      </div>
      <div class="shot-asking">
        {open === null && !isWhyOpen && <AskLine app={app} />}
        <ShotActions app={app} />
        {isWhyOpen ? <WhyPanel app={app} /> : <InputTiles app={app} open={open} />}
        {open && <InputControl app={app} name={open} />}
      </div>
    </>
  );
}

function placeClass(isControlOpen: boolean, isWhyOpen: boolean): string {
  if (isWhyOpen) return 'shot-place is-explained';
  return isControlOpen ? 'shot-place is-open' : 'shot-place';
}
