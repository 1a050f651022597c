import type { Models } from '../app-models';
import { PanelHeader } from './PanelHeader';

/** What a newcomer to the pictures and the words needs, and no more. */
const WORDS = [
  [
    'Aim line, amber',
    'The way the cue points, drawn through the cue ball’s centre. Lay the cue parallel to it.',
  ],
  [
    'Cue, “cue lies here”, dotted',
    'The line the cue itself lies on: parallel to the aim line, beside it where the tip is off the ball’s centre. The picture shows the cue’s slant larger than it is.',
  ],
  ['Goes, the band with edges', 'Aims in it still pot the ball.'],
  [
    'How sure, the haze; “sure to ±3 mm”',
    'The right aim is in it two times in three. It narrows as you measure your kit.',
  ],
  [
    'Lengths rolled, reaches',
    'How many lengths of the table a ball so struck would roll, cushions and all. “Reaches”: the least that brings the object ball to the pocket.',
  ],
  ['Touch, tip', 'Where the leather meets the ball, and the outline of the tip about it.'],
  ['Hold', 'Keeps this shot on the picture, to set the next beside it.'],
  ['Stick passes', 'Where the line of the cue itself, not of the aim, passes the object ball.'],
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
  [
    'Scratch',
    'The cue ball falls into a pocket or leaves the table. A ball that falls with it goes, but costs the turn.',
  ],
  ['Worth', 'How good a way is, all counted: 10 in 10 is a sure win.'],
  [
    'Then yours, else theirs',
    'How often the next shot goes: yours where the ball falls, theirs where the turn passes.',
  ],
  [
    'Foul',
    'No legal ball hit first, none to a cushion or pocket then, a scratch, a ball off the table: they have the ball in hand.',
  ],
  ['Safety', 'Pots nothing, and leaves them little. Hooked: they see no ball of theirs.'],
  ['Bank, kick', 'Off a cushion or two: the object ball, or the cue ball before it meets it.'],
  ['Combination, carom', 'One ball sends another in; or glances off another on its way.'],
  ['Scatter', 'How far strokes meant alike stray.'],
  ['R', 'The ball’s radius: ½ R of side is a tip contact halfway from centre to edge.'],
  ['Squirt', 'The cue ball leaves the tip off line, away from the side.'],
  ['Swerve', 'It curves back towards the side, the more so the higher the cue is raised.'],
  ['Throw', 'The balls rub as they meet, and the object ball leaves off the line of centres.'],
  [
    'Pivot bridge',
    'With the bridge hand that far from the cue ball, address the ghost ball at centre, then turn the cue about the hand to the side you want: it points right.',
  ],
] as const;

/** The words of the app and the lines of its drawings, each in a sentence. */
export function WordsPanel({ app: { router } }: { app: Models<'router'> }) {
  return (
    <>
      <PanelHeader router={router} title="Words and lines" />
      <dl class="about-words">
        {WORDS.map(([term, meaning]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
      <button
        type="button"
        class="button"
        data-opens="about"
        onClick={() => router.visit('kit', 'about')}
      >
        About Leeway
      </button>
    </>
  );
}
