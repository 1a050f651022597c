import type { Models } from '../app-models';
import { useKeptFocus } from '../use-kept-focus';
import { AnswerBlock } from './AnswerBlock';
import { ComparisonLine } from './ComparisonLine';
import { InputControl } from './InputControl';
import { INPUT_NAMES, InputTiles } from './InputTiles';
import { KitStrip } from './KitStrip';
import { OverheadStrip } from './OverheadStrip';
import { ShooterDiagram } from './ShooterDiagram';
import { ShotActions } from './ShotActions';
import { WarningList } from './WarningList';
import { WhyPanel } from './WhyPanel';
import './ShotPlace.css';

/** Where do I point? The picture, the answer, and what is asked. */
export function ShotPlace({
  app,
}: {
  app: Models<'shot' | 'room' | 'player' | 'kit' | 'measure' | 'desk' | 'router'>;
}) {
  const { panel } = app.router.route.value;
  const open = INPUT_NAMES.find((name) => name === panel) ?? null;
  const isWhyOpen = panel === 'why';
  const place = useKeptFocus(panel);
  return (
    <main
      ref={place}
      class={placeClass(open !== null, isWhyOpen)}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && panel !== '') app.router.close();
      }}
    >
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
        <ShotActions app={app} />
        {isWhyOpen ? <WhyPanel app={app} /> : <InputTiles app={app} open={open} />}
        {open && <InputControl app={app} name={open} />}
      </div>
    </main>
  );
}

function placeClass(isControlOpen: boolean, isWhyOpen: boolean): string {
  if (isWhyOpen) return 'shot-place is-explained';
  return isControlOpen ? 'shot-place is-open' : 'shot-place';
}
