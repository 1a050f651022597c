import { expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { playerReport } from '../../../../src/engine/player/player-report';
import { shotLine } from '../../../../src/engine/player/shot-line';
import { questionShot } from '../../../../src/engine/player/the-question';
import { chanceOf } from '../../../../src/engine/room/chance';
import { INVENTED_PROFILES, type StrokeProfile } from '../../../../src/engine/room/stroke-profile';
import { FORMER_MADE } from '../../../../src/store/parse-player';

/** How often the question's shot goes. */
function goes(profile: StrokeProfile, spread = UNMEASURED): number {
  const line = shotLine(questionShot(DEFAULT_KIT, UNMEASURED));
  if (line === null) throw new Error('the question has no answer');
  return chanceOf(line.task, line.kit, line.stroke, profile, spread).share;
}

it.each(Object.entries(INVENTED_PROFILES))(
  'whoever stands where the %s player stood makes the question’s shot about as often',
  (name, profile) => {
    const madeOf10 = FORMER_MADE[name] ?? Number.NaN;
    const asked = { kit: DEFAULT_KIT, spread: UNMEASURED, shots: [] };
    const { known } = playerReport({ ...asked, madeOf10 });
    if (known === null) throw new Error('nothing is known');
    // Nine of ten and ten of ten come out twelve points apart.
    expect(Math.abs(goes(known.profile, known.spread) - goes(profile))).toBeLessThan(0.065);
  },
);
