import type { SavedPosition } from '../../store/saved-position';
import type { LaterModels } from '../app-models';
import { goalWords } from '../choose/shot-words';
import { ballLabel, capitalised, spotWords } from '../choose/table-words';
import { PanelHeader } from '../kit/PanelHeader';
import { CardSides } from './CardPaper';
import { type Drill, DrillCard } from './DrillCard';
import { TakeAway } from './TakeAway';

const BOXES = 20;

/** The card of a position that is kept. */
export function DrillPanel({
  app: { router, links, cards },
  id,
}: {
  app: LaterModels<'router' | 'links' | 'cards'>;
  id: string;
}) {
  const position = links.outgoing(`position/${id}`, false)?.shared.position;
  return (
    <>
      <PanelHeader router={router} title="Drill card" />
      {position ? (
        <>
          <TakeAway cards={cards} name="leeway-drill" />
          <CardSides>
            <DrillCard drill={drillOf(position)} />
          </CardSides>
        </>
      ) : (
        <p>This one is no longer here.</p>
      )}
    </>
  );
}

function drillOf(position: SavedPosition): Drill {
  const { name, goal, zone, balls } = position;
  return {
    name,
    position,
    words: [
      `${goalWords(goal)}.${zone ? ' The cue ball is to stop in the ring.' : ''}`,
      ...balls.map((ball) => `${capitalised(ballLabel(ball.name))}: ${spotWords(ball, position)}.`),
      'Tick a box for each one made.',
    ],
    boxes: BOXES,
  };
}
