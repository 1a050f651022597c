import type { SceneStep } from '../../diagram/trial-scene';
import type { ReadingName } from '../../engine/fit/trials/trial';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { TrialStep } from '../../state/measure/trial-steps';
import { arrivalWords } from './trials/angle';
import { FACES } from './trials/faces';
import { placedAt, type WordsContext } from './trials/trial-face';

/** What a step's screen says. */
export interface StepWords {
  readonly title: string;
  /** One or two short sentences. */
  readonly text: string;
  /** What the big button says; empty where the step asks for a figure. */
  readonly done: string;
}

/** Everything a player needs for one step, with nothing read before. */
export function stepWords(shot: TrialShot, { name }: TrialStep, context: WordsContext): StepWords {
  const face = FACES[shot.trial];
  switch (name) {
    case 'place':
      return {
        title: face.placeTitle,
        text: face.place(shot, context),
        done: face.placed,
      };
    case 'play':
      return {
        title: 'Play it',
        text: `${face.aimAt} ${face.watch}`,
        done: 'Played',
      };
    case 'butt':
      return {
        title: 'Raise the butt',
        text: `Raise it until the middle of its end is ${context.buttHeight} above the cloth’s level, and play from there. Measure how high it is.`,
        done: '',
      };
    case 'timeS':
      return { ...timeWords(shot), done: '' };
    case 'distance':
      return {
        title: 'How far did it roll?',
        text: 'From the line where you tapped first, along the table to the ball’s centre.',
        done: '',
      };
    case 'runM':
      return { ...READ_WORDS.runM, text: runWords(shot, context), done: '' };
    case 'upM':
      return { ...READ_WORDS.upM, text: arrivalWords(shot), done: '' };
    default:
      return { ...READ_WORDS[name], done: '' };
  }
}

const READ_WORDS: Readonly<Record<ReadingName, Pick<StepWords, 'title' | 'text'>>> = {
  landingM: {
    title: 'Where did it touch?',
    text: 'Tap the rail where the ball’s centre first touched it, or type how far from the middle diamond, seen from the break end.',
  },
  objectLandingM: {
    title: 'Where did it touch?',
    text: 'Tap the rail where the object ball’s centre first touched it, or type how far from the middle diamond, seen from the break end.',
  },
  cueBallM: {
    title: 'Where is the cue ball?',
    text: 'From coin A to level with the cue ball’s centre: on is away from you, back towards you.',
  },
  objectBallM: {
    title: 'Where is the other ball?',
    text: 'From coin B on up the table to level with that ball’s centre.',
  },
  bridgeM: {
    title: 'How long is the bridge?',
    text: 'From the cue ball’s near side back to where the cue lies in your bridge hand.',
  },
  runM: { title: 'How far did it run?', text: '' },
  upM: { title: 'Where did it arrive?', text: '' },
  timeS: { title: 'How long did it take?', text: 'In seconds.' },
};

function runWords(shot: TrialShot, context: WordsContext): string {
  const first = 8 - placedAt(shot, context);
  return `In all, up and down. In diamonds: ${first} to the far cushion, 8 for every length after that. Up, back and half way up again is ${first} + 8 + 4.`;
}

function timeWords(shot: TrialShot): Pick<StepWords, 'title' | 'text'> {
  const { timed } = FACES[shot.trial];
  return timed ? { title: timed.title, text: timed.text(shot) } : READ_WORDS.timeS;
}

const FROM_ABOVE = 'The table from above, the break end below.';

/**
 * What the drawing of a trial shows, for whoever cannot see it.
 * @param expected where the ball is drawn to touch the far rail, or null
 */
export function drawingWords(shot: TrialShot, step: SceneStep, expected: string | null): string {
  if (step !== 'set-up') return `${FROM_ABOVE} ${DRAWN_WORDS[step]}`;
  const told = `${FROM_ABOVE} ${FACES[shot.trial].shown(shot)}`;
  return expected === null ? told : `${told} It is expected to touch the far rail at ${expected}.`;
}

const DRAWN_WORDS: Readonly<Record<Exclude<SceneStep, 'set-up'>, string>> = {
  landingM: 'The far rail, a rule in diamonds along it with its zero at the middle diamond.',
  objectLandingM: 'The far rail, a rule in diamonds along it with its zero at the middle diamond.',
  timeS: '',
  cueBallM: 'A line to measure, from beside coin A to the cue ball at rest.',
  objectBallM: 'A line to measure, from beside coin B to the other ball at rest.',
  bridgeM: 'A line to measure, from the cue ball’s near side back to the bridge hand.',
  runM: 'The diamonds of the long rails numbered from the break end, to be counted.',
  upM: 'The way off the first rail to the other long rail, whose diamonds are numbered from the break end.',
  distance: 'A line to measure, from the line of the first tap to the ball at rest.',
};
