import { POCKETS_UPRIGHT } from '../../diagram/pockets-upright';
import type { PocketName } from '../../engine/table/pocket-shape';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { Models } from '../app-models';
import { tellingOf } from '../chance-telling';
import { forWords } from '../player/player-words';
import { AnyTools } from './all-ways/AnyTools';
import { LegalTools } from './all-ways/LegalTools';
import { pocketsTold } from './pockets-told';
import { hindranceLines } from './shot-words';
import { ballLabel, POCKETS_TURNED, pocketWords } from './table-words';
import type { Board } from './use-board';
import './PlayTools.css';

interface Props {
  readonly app: Models<'choose' | 'player' | 'router'>;
  readonly board: Board;
}

/** The ball to play, and the pocket to play it into. */
export function PlayTools({ app, board }: Props) {
  const { choose } = app;
  return (
    <>
      <BallToPlay choose={choose} />
      <Pockets app={app} board={board} />
      <PocketsNote app={app} />
      <Hindrances choose={choose} />
      <AnyTools choose={choose} />
      <LegalTools choose={choose} />
    </>
  );
}

function BallToPlay({ choose }: { choose: ChooseModel }) {
  const { balls, goal } = choose.open.value;
  const objects = balls.flatMap(({ name }) => (name === 'cue' ? [] : [name])).sort((a, b) => a - b);
  return (
    <>
      <fieldset class="ball-palette">
        <legend class="visually-hidden">Ball to play</legend>
        {objects.map((name) => (
          <button
            key={name}
            type="button"
            class="palette-ball is-laid"
            aria-label={ballLabel(name)}
            aria-pressed={name === goal.ball}
            onClick={() => choose.playBall(name === goal.ball ? null : name)}
          >
            <span>{name}</span>
          </button>
        ))}
      </fieldset>
      {objects.length === 0 && <p>Lay the cue ball and a ball to play first.</p>}
    </>
  );
}

function Hindrances({ choose }: { choose: ChooseModel }) {
  const shot = choose.shot.value;
  if (!shot?.ok) return null;
  const lines = hindranceLines(shot, choose.open.value.goal.ball);
  if (lines.length === 0) return null;
  return (
    <ul class="hindrances">
      {lines.map((line) => (
        <li key={line}>
          <span aria-hidden="true">▲</span> {line}
        </li>
      ))}
    </ul>
  );
}

/** The six pockets as they lie on the drawing, each with how often the ball goes in, or why not. */
function Pockets({ app, board }: Props) {
  const { isTurned } = board.map.value;
  const names = isTurned ? POCKETS_TURNED : POCKETS_UPRIGHT;
  return (
    <div class={isTurned ? 'side-buttons pockets is-turned' : 'side-buttons pockets'}>
      {names.map((name) => (
        <PocketButton key={name} app={app} name={name} />
      ))}
    </div>
  );
}

function PocketButton({ app, name }: Pick<Props, 'app'> & { readonly name: PocketName }) {
  const { choose } = app;
  const { ball, pocket } = choose.open.value.goal;
  const isChosen = pocket === name;
  const told = pocketsTold(app).get(name);
  return (
    <button
      type="button"
      class={told?.isClosed ? 'button pocket-button is-closed' : 'button pocket-button'}
      aria-label={`Into the ${pocketWords(name)} pocket${told ? `, ${told.words}` : ''}`}
      aria-pressed={isChosen}
      onClick={() => choose.playInto(isChosen ? null : name)}
    >
      <span>
        <span class="pocket-name">{pocketWords(name)}</span>
        {ball !== null && <b>{told?.words ?? '\u00a0'}</b>}
      </span>
    </button>
  );
}

/** For whom and what stroke the pockets' chances are. */
function PocketsNote({ app }: Pick<Props, 'app'>) {
  const { choose, player } = app;
  const { balls, goal } = choose.open.value;
  if (goal.ball === null || !balls.some(({ name }) => name === 'cue')) return null;
  if (choose.chances.value === null) return <p class="choose-note">Working out every pocket…</p>;
  const whom = tellingOf(app) === 'ease' ? 'most players' : forWords(player.inPlay.value);
  return (
    <p class="choose-note">
      {`About, for ${whom}: no side, medium speed, firmer only to get there.`}
    </p>
  );
}
