import { useEffect } from 'preact/hooks';
import type { DrillPosition } from '../../state/log/kept-drills';
import type { LaidRung } from '../../state/log/practice-model';
import type { SavedPosition } from '../../store/saved-position';
import type { LaterModels } from '../app-models';
import { laidLines } from '../choose/all-ways/laid-words';
import { goalWords } from '../choose/shot-words';
import { spotLines } from '../choose/table-words';
import { PanelHeader } from '../kit/PanelHeader';
import { isTheme, LADDER_RULE, THEME_WORDS } from '../log/practice-words';
import { rungPlaces, rungTask } from '../log/rung-words';
import { useLaid, usePlayed } from '../log/use-played';
import { CardSides } from './CardPaper';
import { type Drill, DrillCard } from './DrillCard';
import { TakeAway } from './TakeAway';

type App = LaterModels<'router' | 'links' | 'cards' | 'log' | 'player' | 'shot' | 'desk'>;
type Theme = keyof typeof THEME_WORDS;

/**
 * The card of something to play again and again.
 *
 * @param id of a position that is kept, or of a way with its position; or the theme of a ladder, whose shot
 *   that is to be played now it is
 */
export function DrillPanel({ app, id }: { app: App; id: string }) {
  return (
    <>
      <PanelHeader router={app.router} title="Drill card" />
      {isTheme(id) ? <RungCard app={app} theme={id} /> : <KeptOrLaid app={app} id={id} />}
    </>
  );
}

function RungCard({ app, theme }: { app: App; theme: Theme }) {
  const { practice } = app.log;
  useEffect(() => practice.play(theme), [practice, theme]);
  const rung = practice.next.value;
  const drill = rung && drillOfRung(app, theme, rung);
  if (drill) return <OneCard app={app} drill={drill} />;
  return <p role="status">{practice.problem.value ?? 'Working the card out…'}</p>;
}

function KeptOrLaid({ app, id }: { app: App; id: string }) {
  const kept = app.log.practice.kept.find(id);
  if (kept) return <KeptCard app={app} kept={kept} />;
  const position = app.links.outgoing(`position/${id}`, false)?.shared.position;
  if (position) return <OneCard app={app} drill={drillOfPosition(position)} />;
  return <p role="status">This one is no longer here.</p>;
}

/** Of a way, as it goes on the table in play. */
function KeptCard({ app, kept }: { app: App; kept: DrillPosition }) {
  const laid = useLaid(app, kept);
  const played = usePlayed(app, laid);
  const { position, stroke } = laid;
  const words = [...laidLines(app, position, stroke), ...spotLines(position)];
  return <OneCard app={app} drill={{ name: kept.name, position, played, words }} />;
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

function drillOfPosition(position: SavedPosition): Drill {
  const { name, goal, zone } = position;
  const stop = zone ? ' The cue ball is to stop in the ring.' : '';
  return { name, position, words: [`${goalWords(goal)}.${stop}`, ...spotLines(position)] };
}

/** Null of a shot that lies on no table. */
function drillOfRung(app: App, theme: Theme, laid: LaidRung): Drill | null {
  const { asked, rung } = laid;
  if (!asked.position) return null;
  const { balls, goal } = asked.position;
  const { lengthM, widthM } = app.log.practice.shape.value;
  return {
    name: `Practice: ${THEME_WORDS[theme][0].toLowerCase()}`,
    position: { lengthM, widthM, balls, goal, zone: rung.rest },
    words: [
      ...rungPlaces(app, laid).map(([what, words]) => `${what}: ${words}.`),
      ...rungTask(app, laid).map(([what, words]) => `${what} ${words}.`),
      LADDER_RULE,
    ],
  };
}
