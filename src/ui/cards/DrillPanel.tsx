import type { DrillPosition } from '../../state/log/kept-drills';
import type { SavedPosition } from '../../store/saved-position';
import type { LaterModels } from '../app-models';
import { goalWords } from '../choose/shot-words';
import { PanelHeader } from '../kit/PanelHeader';
import { drillLines, spotLines } from '../log/drill-lines';
import { useLaid, usePlayed } from '../log/use-played';
import { CardSides } from './CardPaper';
import { type Drill, DrillCard } from './DrillCard';
import { TakeAway } from './TakeAway';

const BOXES = 20;

type App = LaterModels<'router' | 'links' | 'cards' | 'log' | 'shot' | 'desk'>;

/** The card of a position, or of a way, that is kept. */
export function DrillPanel({ app, id }: { app: App; id: string }) {
  const position = app.links.outgoing(`position/${id}`, false)?.shared.position;
  const kept = app.log.practice.kept.find(id);
  return (
    <>
      <PanelHeader router={app.router} title="Drill card" />
      {position && <OneCard app={app} drill={drillOf(position)} />}
      {kept && <KeptCard app={app} kept={kept} />}
      {!position && !kept && <p>This one is no longer here.</p>}
    </>
  );
}

function OneCard({ app: { cards }, drill }: { app: App; drill: Drill }) {
  return (
    <>
      <TakeAway cards={cards} name="leeway-drill" />
      <CardSides>
        <DrillCard drill={drill} />
      </CardSides>
    </>
  );
}

/** Of a way, as it goes on the table in play. */
function KeptCard({ app, kept }: { app: App; kept: DrillPosition }) {
  const laid = useLaid(app, kept);
  const played = usePlayed(app, laid);
  const words = [...drillLines(app, kept, laid), TICK];
  const { name } = kept;
  return (
    <OneCard app={app} drill={{ name, position: laid.position, played, words, boxes: BOXES }} />
  );
}

const TICK = 'Tick a box for each one made.';

function drillOf(position: SavedPosition): Drill {
  const { name, goal, zone } = position;
  return {
    name,
    position,
    words: [
      `${goalWords(goal)}.${zone ? ' The cue ball is to stop in the ring.' : ''}`,
      ...spotLines(position),
      TICK,
    ],
    boxes: BOXES,
  };
}
