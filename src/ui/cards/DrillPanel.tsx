import { useEffect } from 'preact/hooks';
import type { LaidRung } from '../../state/log/practice-model';
import type { LaterModels } from '../app-models';
import { laidLines } from '../choose/all-ways/laid-words';
import { goalWords } from '../choose/shot-words';
import { ballLabel, capitalised, spotWords } from '../choose/table-words';
import { PanelHeader } from '../kit/PanelHeader';
import { isTheme, LADDER_RULE, THEME_WORDS } from '../log/practice-words';
import { rungPlaces, rungTask } from '../log/rung-words';
import { CardSides } from './CardPaper';
import { type Drill, DrillCard } from './DrillCard';
import { TakeAway } from './TakeAway';

type App = LaterModels<'router' | 'links' | 'cards' | 'log' | 'player' | 'shot' | 'desk'>;

/**
 * The card of something to play again and again.
 *
 * @param id of a position that is kept, or of a way with its position; or the theme of a ladder, whose shot
 *   that is to be played now it is
 */
export function DrillPanel({ app, id }: { app: App; id: string }) {
  const { practice } = app.log;
  useEffect(() => (isTheme(id) ? practice.play(id) : undefined), [practice, id]);
  const drill = isTheme(id) ? drillOfRung(app, id) : drillOfPosition(app, id);
  return (
    <>
      <PanelHeader router={app.router} title="Drill card" />
      {typeof drill === 'string' ? (
        <p role="status">{drill}</p>
      ) : (
        <>
          <TakeAway cards={app.cards} name="leeway-drill" />
          <CardSides>
            <DrillCard drill={drill} />
          </CardSides>
        </>
      )}
    </>
  );
}

/** In words why there is none. */
function drillOfPosition(app: App, id: string): Drill | string {
  const position = app.links.outgoing(`position/${id}`, false)?.shared.position;
  if (!position) return 'This one is no longer here.';
  const { name, goal, zone, balls } = position;
  const laid = laidLines(app, position);
  return {
    name,
    position,
    words: [
      ...(laid.length > 0 ? laid : [`${goalWords(goal)}.`]),
      ...(zone ? ['The cue ball is to stop in the ring.'] : []),
      ...balls.map((ball) => `${capitalised(ballLabel(ball.name))}: ${spotWords(ball, position)}.`),
    ],
  };
}

function drillOfRung(app: App, theme: keyof typeof THEME_WORDS): Drill | string {
  const { next, problem, shape } = app.log.practice;
  const rung: LaidRung | null = next.value;
  const laid = rung?.asked.position;
  if (!rung || !laid) return problem.value ?? 'Working the card out…';
  const { lengthM, widthM } = shape.value;
  return {
    name: `Practice: ${THEME_WORDS[theme][0].toLowerCase()}`,
    position: { lengthM, widthM, balls: laid.balls, goal: laid.goal, zone: rung.rung.rest },
    words: [
      ...rungPlaces(app, rung).map(([what, words]) => `${what}: ${words}.`),
      ...rungTask(app, rung).map(([what, words]) => `${what} ${words}.`),
      LADDER_RULE,
    ],
  };
}
