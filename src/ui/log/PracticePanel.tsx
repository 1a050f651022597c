import { useEffect } from 'preact/hooks';
import { clothSketch, cueSketch, PLAYER_SKETCH, type Sketch } from '../../diagram/kit-sketch';
import type { Theme } from '../../engine/player/drill-shot';
import type { Models } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { PictureRow } from '../kit/PictureRow';
import { AskOnce } from '../player/AskOnce';
import { KeptDrills } from './KeptDrills';
import { LimitBars } from './LimitBars';
import { PracticeDays } from './PracticeDays';
import { LADDER_RULE, ladderWords, limitsInOrder, THEME_OF, THEME_WORDS } from './practice-words';
import './Practice.css';

type App = Models<'player' | 'log' | 'choose' | 'kit' | 'nowMs' | 'router'>;

const THEMES: readonly Theme[] = ['line', 'speed', 'side'];

/** What limits whoever plays, ladders of shots for it, and ways kept to be played again. */
export function PracticePanel({ app }: { app: App }) {
  const { log, player } = app;
  const { practice } = log;
  useEffect(() => practice.weigh(), [practice]);
  const limits = practice.limits.value;
  const themes = limits ? limitsInOrder(limits).map((limit) => THEME_OF[limit]) : THEMES;
  return (
    <>
      <PanelHeader router={app.router} title="Practice" />
      <section class="practice-part" aria-labelledby="practice-limits">
        <h2 id="practice-limits">What limits most</h2>
        {limits ? (
          <LimitBars app={app} limits={limits} />
        ) : (
          <p role="status">
            {player.isKnown.value
              ? 'Working it out…'
              : 'Log some shots, or answer the question: then it is told.'}
          </p>
        )}
        <AskOnce app={app} panel="practice/question" />
      </section>
      <section class="practice-part" aria-labelledby="practice-ladders">
        <h2 id="practice-ladders">Ladders</h2>
        <p class="place-note">{LADDER_RULE} So a ladder settles where about 7 in 10 are made.</p>
        <ul class="shelf-list">
          {themes.map((theme, place) => (
            <LadderRow
              key={theme}
              app={app}
              theme={theme}
              isFirst={place === 0 && limits !== null}
            />
          ))}
        </ul>
        <PracticeDays app={app} />
      </section>
      <KeptDrills app={app} />
    </>
  );
}

interface RowProps {
  readonly app: App;
  readonly theme: Theme;
  /** Whether it is for what limits most. */
  readonly isFirst: boolean;
}

const SKETCHES: Readonly<Record<Theme, Sketch>> = {
  line: PLAYER_SKETCH,
  speed: clothSketch(4),
  side: cueSketch(0.03),
};

function LadderRow({ app, theme, isFirst }: RowProps) {
  const ladder = app.log.practice.ladders.value[theme];
  const [name, how] = THEME_WORDS[theme];
  return (
    <PictureRow app={app} panel={`practice/${theme}`} sketch={SKETCHES[theme]}>
      <b>{isFirst ? `${name}: what limits most` : name}</b>{' '}
      <span class="shelf-effect">
        {how} {ladderWords(ladder)}
      </span>
    </PictureRow>
  );
}
