import type { MeantStroke, ReadingName, SpeedWord } from '../../engine/fit/trials/trial';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { TrialStep } from '../../state/measure/trial-steps';
import { diamondAt, ordinal } from '../../units/diamond-count';
import { directionWord } from '../../units/direction-word';
import type { LengthUnit } from '../../units/unit-names';
import { ballsApart, gapWords } from './trial-words';

/** What a step's screen says. */
export interface StepWords {
  readonly title: string;
  /** One or two short sentences. */
  readonly text: string;
  /** What the big button says; empty where the step asks for a figure. */
  readonly done: string;
}

/** What the words hang on beside the shot. */
export interface WordsContext {
  readonly ballRadiusM: number;
  readonly lengthUnit: LengthUnit;
  /** How high the butt is to be raised, ready to show; empty where it is not. */
  readonly buttHeight: string;
}

/** Everything a player needs for one step, with nothing read before. */
export function stepWords(shot: TrialShot, { name }: TrialStep, context: WordsContext): StepWords {
  switch (name) {
    case 'place':
      return {
        title: PLACE_TITLES[shot.trial] ?? 'Place the balls',
        text: placeWords(shot, context),
        done: PLACED[shot.trial] ?? 'It is placed',
      };
    case 'play':
      return {
        title: 'Play it',
        text: `${AIM_AT[shot.trial]} ${WATCH[shot.trial]}`,
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
    default:
      return { ...READ_WORDS[name], done: '' };
  }
}

const PLACE_TITLES: { readonly [T in TrialShot['trial']]?: string } = {
  line: 'Place the cue ball',
  curve: 'Place the cue ball',
  speed: 'Place the cue ball',
  coast: 'Take a ball in your hand',
  pivot: 'Build a gate and try it',
};

const PLACED: { readonly [T in TrialShot['trial']]?: string } = {
  coast: 'I have the ball',
  pivot: 'It goes through',
};

const AT_BREAK_END = 'Stand at the break end.';

function placeWords(shot: TrialShot, context: WordsContext): string {
  switch (shot.trial) {
    case 'line':
    case 'curve':
    case 'speed':
      return `${AT_BREAK_END} ${inMiddle('the cue ball', placedAt(shot, context))}`;
    case 'stop':
      return `${AT_BREAK_END} ${stopWords(shot, context)}`;
    case 'throw':
      return throwWords(shot, context);
    case 'coast':
      return coastWords(shot);
    case 'pivot':
      return pivotWords(shot);
  }
}

/** The diamond that the ball which is to reach the far cushion is level with. */
function placedAt({ setup }: TrialShot, { ballRadiusM }: WordsContext): number {
  return diamondAt(setup.bedLengthM - ballRadiusM - setup.distanceM, setup.bedLengthM);
}

function inMiddle(ball: string, diamond: number): string {
  return `Put ${ball} in the middle, level with the ${ordinal(diamond)} diamonds (sights) of the long rails.`;
}

function stopWords({ setup }: TrialShot, { ballRadiusM, lengthUnit }: WordsContext): string {
  const gap = `${gapWords(setup.gapM, lengthUnit)} (${ballsApart(setup.gapM, ballRadiusM)})`;
  return `Cue ball in the middle by the first diamonds, another ball ${gap} clear straight before it. Coins on the right rail: B beside that ball, A a ball’s width short of it.`;
}

function throwWords(shot: TrialShot, context: WordsContext): string {
  const { cutRad } = shot.setup;
  const object = `The object ball in the middle by the ${ordinal(placedAt(shot, context))} diamonds (the side pocket is the fourth), a spare touching it straight towards you.`;
  const degrees = Math.round((Math.abs(cutRad) * 180) / Math.PI);
  const around =
    cutRad === 0 ? 'straight behind' : `${degrees}° round to the ${directionWord(cutRad)}`;
  return `${AT_BREAK_END} ${object} Cue ball ${spareGapWords(shot, context)}, ${around}. Take the spare away.`;
}

/** How far the cue ball lies from the spare ball that stands for the ghost ball. */
export function spareGapWords(
  { setup }: TrialShot,
  { ballRadiusM, lengthUnit }: Pick<WordsContext, 'ballRadiusM' | 'lengthUnit'>,
): string {
  const clearM = setup.gapM - 2 * ballRadiusM;
  return clearM < TOUCHING_M
    ? 'touching the spare'
    : `${gapWords(clearM, lengthUnit)} from the spare`;
}

/** Balls nearer than this are put down touching. */
const TOUCHING_M = 0.003;

function coastWords({ stroke }: TrialShot): string {
  return Math.cos(stroke.headingRad) > 0
    ? 'Stand at the break end. You will roll a ball up the middle by hand, so softly that it stops before the far rail.'
    : 'Go round to the far end. You will roll a ball down the middle by hand, so softly that it stops before the break end.';
}

function pivotWords(shot: TrialShot): string {
  return `Cue ball in the middle by the second diamonds; by the fifth (side pocket: fourth), two balls make a gate just wider than a ball. Aim through it without side, swing the cue about your bridge to the ${tipWords(shot.stroke)}, and play. Off to the tip’s side: lengthen the bridge; else shorten.`;
}

/** Turned instead of shifted, the cue would aim the squirt away. */
const STRAIGHT_WITH_SIDE =
  'Point the cue through the ball’s centre at the middle diamond of the far rail; then shift it, still parallel, to the tip shown.';

const AIM_AT: Readonly<Record<TrialShot['trial'], string>> = {
  line: STRAIGHT_WITH_SIDE,
  curve: STRAIGHT_WITH_SIDE,
  speed: 'Play straight at the middle diamond of the far rail.',
  stop: 'Cue level, full at the other ball.',
  throw: 'Aim through the middle of where the spare ball was.',
  coast: 'Roll it straight.',
  pivot: 'Aim through the gate.',
};

const WATCH: Readonly<Record<TrialShot['trial'], string>> = {
  line: 'See where the ball first touches the far cushion.',
  curve: 'See where the ball first touches the far cushion.',
  stop: 'Let both balls come to rest; if one meets a cushion, step back and play again.',
  throw: 'See where the object ball first touches the far cushion.',
  speed: 'Count the cushions, and see by which diamond the ball rests.',
  coast: '',
  pivot: '',
};

function timeWords({ trial, stroke }: TrialShot): Pick<StepWords, 'title' | 'text'> {
  if (trial === 'coast') {
    const rail = Math.cos(stroke.headingRad) > 0 ? 'first' : 'seventh';
    return {
      title: 'Roll it and time it',
      text: `Tap as the ball’s centre passes the ${rail} diamonds’ line, and again the moment it rests.`,
    };
  }
  return {
    title: 'Play it and time it',
    text: `${AIM_AT[trial]} A friend taps as the tip strikes and as the ball touches the far cushion; alone, film it and type the time. See where.`,
  };
}

const READ_WORDS: Readonly<Record<ReadingName, Pick<StepWords, 'title' | 'text'>>> = {
  landingM: {
    title: 'Where did it touch?',
    text: 'How far from the middle diamond the ball’s centre was as it first touched the far cushion; left and right as seen from the break end.',
  },
  objectLandingM: {
    title: 'Where did it touch?',
    text: 'How far from the middle diamond the object ball’s centre was as it first touched the far cushion; left and right as seen from the break end.',
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
  timeS: { title: 'How long did it take?', text: 'In seconds.' },
};

function runWords(shot: TrialShot, context: WordsContext): string {
  const first = 8 - placedAt(shot, context);
  return `In all, up and down. In diamonds: ${first} to the far cushion, 8 for every length after that. Up, back and half way up again is ${first} + 8 + 4.`;
}

/** A tip contact this far out, radii, is well out. */
const WELL_OUT = 0.4;

/** Where the tip goes: "tip well right of centre". */
export function tipWords({ side, height }: Pick<MeantStroke, 'side' | 'height'>): string {
  const across =
    side === 0 ? '' : `${Math.abs(side) > WELL_OUT ? 'well ' : ''}${directionWord(side)}`;
  const up =
    height === 0
      ? ''
      : `${Math.abs(height) > WELL_OUT ? 'well ' : ''}${height < 0 ? 'below' : 'above'}`;
  if (across === '' && up === '') return 'tip on the centre';
  if (up === '') return `tip ${across} of centre`;
  return across === '' ? `tip ${up} centre` : `tip ${across} of and ${up} centre`;
}

const YOURS: Readonly<Record<SpeedWord, string>> = {
  soft: 'your soft',
  medium: 'your medium',
  firm: 'your firm',
};

/** How hard, in the player's own word. */
export function speedName({ stroke }: TrialShot): string {
  return stroke.speedWord === null ? 'as fast as said' : YOURS[stroke.speedWord];
}
