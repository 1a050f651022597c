import { useEffect, useRef } from 'preact/hooks';
import {
  isSafety,
  type ShownPot,
  type ShownWay,
  shotOf,
  struckAs,
} from '../../../state/choose/all-ways/shown-way';
import type { Models } from '../../app-models';
import { tellingOf } from '../../chance-telling';
import { tipOf } from '../../shot/tip-told';
import { FanLines } from '../FanLines';
import { FAN_LEAD, SPREAD_LINE } from '../fan-words';
import { KeepDrill } from '../KeepDrill';
import { PictureOfWay } from '../PictureOfWay';
import { tenthsWords } from '../pocket-words';
import { RaisedWay } from '../RaisedWay';
import { ShareWay } from '../ShareWay';
import { pocketWords } from '../table-words';
import { WayFigure } from '../WayFigure';
import { leadLabel, leadShare, sentences, strokeWords, wayLine, wayName } from '../way-words';
import { aimedAt } from './aim-line';
import { playWords, wayKind } from './kind-words';
import { pointLine, struckLine } from './laid-words';
import { OpenedSafety } from './OpenedSafety';
import { ReadAloud } from './ReadAloud';
import { roomLines } from './room-lines';
import { WhyWorth, WorthFigure } from './WhyWorth';
import { waySentence } from './way-sentence';
import { isByLuck, LUCK_LINE, slopeLine } from './worth-words';

type App = Models<'shot' | 'choose' | 'player' | 'desk' | 'router' | 'cards'>;

interface Props<W = ShownWay> {
  readonly app: App;
  readonly way: W;
}

/** The panel of a way that is laid out to be aimed. */
export const AIM_PANEL = 'ways/aim';

/** A way that was picked: how it plays out, or how to lay the cue. */
export function OpenedWay({ app, way }: Props) {
  const isAiming = app.router.route.value.panel === AIM_PANEL && shotOf(way) === null;
  const sentence = waySentence(app, way);
  const point = aimedAt(app.choose, way.told);
  return (
    <section key={isAiming ? 'aim' : 'fan'} class="way-fan" aria-labelledby="chosen-way">
      <Title way={way} sentence={sentence} />
      {isAiming ? <AsLaid app={app} way={way} /> : <Opened app={app} way={way} />}
      {point && !isSafety(way) && <Room app={app} way={way} awayM={point.awayM} />}
      <PictureOfWay app={app} isOff={app.choose.all.isMoved.value}>
        <ReadAloud choose={app.choose} sentence={sentence} />
      </PictureOfWay>
      {isAiming ? <WayBack app={app} /> : <WaysOn app={app} way={way} />}
    </section>
  );
}

function Opened({ app, way }: Props) {
  return isSafety(way) ? <OpenedSafety app={app} way={way} /> : <HowItPlays app={app} way={way} />;
}

function HowItPlays({ app, way }: Props<ShownPot>) {
  const { told, fan, does } = way;
  const slope = slopeLine(told);
  return (
    <>
      {does === undefined || <Brought app={app} way={way} does={does} />}
      <Told app={app} way={way} />
      <RaisedWay way={told} />
      <p class="way-reason">{FAN_LEAD}:</p>
      <FanLines choose={app.choose} plays={fan} ball={told.goal.ball} />
      {slope && <p class="way-why">{slope}</p>}
      {told.rest.places.length > 0 && <p class="way-reason">{SPREAD_LINE}</p>}
    </>
  );
}

/** A way that somebody else laid is told as they did, first of all. */
function Brought({ app, way, does }: Props<ShownPot> & { readonly does: boolean }) {
  return (
    <>
      <p class="way-reason">As it was laid elsewhere, told for the kit in play here.</p>
      {does || (
        <p class="way-warning">
          ▲ Struck just so, it does not go here: the kit or the table is another.
        </p>
      )}
      {shotOf(way) === null && <Pointed app={app} told={way.told} />}
    </>
  );
}

/** The focus comes here; what is heard is what is read aloud. */
function Title({ way: { told }, sentence }: Pick<Props, 'way'> & { readonly sentence: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), []);
  return (
    <>
      <h2
        id="chosen-way"
        class="way-title"
        tabIndex={-1}
        ref={heading}
        aria-describedby="way-sentence"
      >
        {playWords(told)}
      </h2>
      <p id="way-sentence" class="visually-hidden">
        {sentence}
      </p>
    </>
  );
}

/** How often it goes, how it is struck, and why it is no easier. */
function Told({ app, way: { told } }: Props<ShownPot>) {
  const telling = tellingOf(app);
  const line = sentences([isByLuck(told) ? LUCK_LINE : '', wayLine(told, telling)]);
  return (
    <>
      <p class="way-played">
        <WorthFigure app={app} told={told} />{' '}
        <WayFigure label={leadLabel(told, telling)}>
          {tenthsWords(leadShare(told), telling)}
        </WayFigure>{' '}
        <span class="way-called">{wayName(told)}</span>
      </p>
      <p class="way-stroke">{strokeWords(told, app.shot.speedScale.value, tipOf(app))}</p>
      {line && <p class="way-reason">{line}.</p>}
      <WhyWorth app={app} told={told} />
      {app.choose.all.isMoved.value && <p class="way-reason">The position has changed since.</p>}
    </>
  );
}

/** How far each part of the stroke may be off, and it still goes. */
function Room({ app, way: { told }, awayM }: Props<ShownPot> & { readonly awayM: number }) {
  const lines = roomLines(app, told, awayM);
  if (lines.length === 0)
    return <p class="way-reason">It goes by a hair: there is no room to tell.</p>;
  return (
    <>
      <p class="way-reason">Goes, all else as meant (the line as seen where it meets the rail):</p>
      <ul class="fan-lines">
        {lines.map(({ what, words }) => (
          <li key={what}>
            {what} {words}
          </li>
        ))}
      </ul>
    </>
  );
}

/** Back to the list, and on to the aim. */
function WaysOn({ app, way }: Props) {
  const { choose, router } = app;
  const { all } = choose;
  const isMoved = all.isMoved.value;
  const isDirect = shotOf(way) !== null;
  const aim = () => {
    if (!isDirect) router.open(AIM_PANEL);
    else if (all.sendToShot()) router.goTo('shot');
  };
  return (
    <div class="sheet-foot">
      <button type="button" class="button" onClick={() => all.choose(null)}>
        <span aria-hidden="true">‹</span> All ways
      </button>
      <button
        type="button"
        class={isMoved ? 'button' : 'button button-primary'}
        data-opens={AIM_PANEL}
        disabled={isMoved}
        onClick={aim}
      >
        Aim it
      </button>
      {isDirect && (
        <button
          type="button"
          class="button"
          aria-label="Log how it went"
          data-opens="ways/after"
          disabled={all.toLog.value === null}
          onClick={() => router.open('ways/after')}
        >
          Log
        </button>
      )}
      {isSafety(way) || <ShareWay router={router} isOff={isMoved} />}
      {isSafety(way) || <KeepDrill app={app} name={keptName(way)} />}
      {isMoved && (
        <button type="button" class="button button-primary" onClick={() => all.look()}>
          Look again
        </button>
      )}
    </div>
  );
}

/** The cue as it is laid on the table. */
function AsLaid({ app, way: { told } }: Props) {
  const played = struckAs(told);
  return (
    <>
      <Pointed app={app} told={told} />
      <p class="aim-point">{struckLine(app, played.option.stroke)}</p>
      <RaisedWay way={played} />
    </>
  );
}

function Pointed({ app, told }: Pick<Props, 'app'> & Pick<ShownWay, 'told'>) {
  const point = aimedAt(app.choose, told);
  return point && <p class="aim-point">{pointLine(point)}</p>;
}

function WayBack({ app }: Pick<Props, 'app'>) {
  return (
    <div class="sheet-foot">
      <button type="button" class="button" onClick={() => app.router.close()}>
        <span aria-hidden="true">‹</span> How it plays
      </button>
    </div>
  );
}

/** "3 far right, bank off the left rail". */
function keptName({ told }: ShownPot): string {
  const { ball, pocket } = told.goal;
  return `${ball} ${pocketWords(pocket)}, ${wayKind({ ...told, doubleKiss: false })}`;
}
