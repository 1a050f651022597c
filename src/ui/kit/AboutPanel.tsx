import type { Models } from '../app-models';
import { InstallHelp } from '../install/InstallHelp';
import { PanelHeader } from './PanelHeader';
import { Repaired, RepairPart } from './RepairPart';

/** What a newcomer to the pictures and the words needs, and no more. */
const WORDS = [
  [
    'Aim here, the amber line',
    'The way the cue points, drawn through the cue ball’s centre. Lay the cue parallel to it.',
  ],
  [
    'Stick, the dotted line',
    'Where the cue itself points: beside the amber line, for its tip is off the ball’s centre.',
  ],
  ['Ghost ball', 'Where the cue ball must be when it meets the object ball.'],
  ['Inside, outside', 'Side towards the way the object ball is cut, or away from it.'],
  [
    'Thin, true, full hit',
    'The object ball met a little to one side, as meant, or a little more head-on. Thin and full are the edges of what still goes.',
  ],
  [
    'Roll, stun, draw',
    'How the cue ball turns as they meet: forward and it runs on, not at all, backward and it comes back.',
  ],
  ['Drag', 'Struck low and firm enough to lose the backspin on the way.'],
  ['Zone', 'Where you would have the cue ball come to rest.'],
  ['Scratch', 'The cue ball falls into a pocket or leaves the table.'],
  ['R', 'The ball’s radius: ½ R of side is a tip contact halfway from centre to edge.'],
  ['Squirt', 'The cue ball leaves the tip off line, away from the side.'],
  ['Swerve', 'It curves back towards the side, the more so the higher the cue is raised.'],
  ['Throw', 'The balls rub as they meet, and the object ball leaves off the line of centres.'],
  [
    'Pivot bridge',
    'With the bridge hand that far from the cue ball, address the ghost ball at centre, then turn the cue about the hand to the side you want: it points right.',
  ],
] as const;

/** What the app is and is not, and what to mind in a hall. */
export function AboutPanel({ app }: { app: Models<'repair' | 'install' | 'router'> }) {
  return (
    <>
      <PanelHeader router={app.router} title="About Leeway" />
      <div class="about-text">
        <Repaired repair={app.repair} />
        <p>
          Leeway works out where to point the cue when a shot carries side: how far the cue ball
          squirts, how far it swerves, and how far the object ball is thrown.
        </p>
        <p>
          Many leagues forbid a phone during a match. Look things up in practice, and ask before you
          play.
        </p>
        <p>
          A raised cue can tear the cloth or send a ball off the table: ask the room’s owner first.
        </p>
        <p>
          An answer is as good as its numbers. Defaults are invented examples; yours may differ by
          more than a shot allows.
        </p>
        <p>Everything stays on this device. Nothing is sent anywhere.</p>
        {!app.install.isInstalled.value && (
          <section class="install-help" aria-labelledby="install-help">
            <h2 id="install-help">Have it as an app</h2>
            <InstallHelp app={app} />
          </section>
        )}
        <h2>Words and lines</h2>
        <dl class="about-words">
          {WORDS.map(([term, meaning]) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
        <RepairPart repair={app.repair} />
      </div>
    </>
  );
}
