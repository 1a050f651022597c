import type { PlayerName } from '../store/records';
import { DEGREES, degreesOf } from '../units/angle-degrees';
import { formatQuantity } from '../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../units/length-unit';
import type { Models } from './app-models';
import { Choices } from './controls/Choices';

const PLAYERS: readonly PlayerName[] = ['steady', 'club', 'beginner'];

/** Whose stroke the chance is told for: one of the invented players, and how theirs scatters. */
export function PlayerChoice({ app: { desk, room } }: { app: Models<'room' | 'desk'> }) {
  const { directionRad, speedShare, tipM, elevationRad } = room.profile.value;
  const angle = (angleRad: number) =>
    `±${formatQuantity(degreesOf(angleRad), { ...DEGREES, decimals: 2 })}`;
  const { lengthUnit } = desk.preferences.value;
  const facts = LENGTH_UNITS[lengthUnit];
  const finer = { ...facts, decimals: facts.decimals + 1, leastDecimals: facts.decimals + 1 };
  return (
    <div class="player-choice">
      <Choices
        label="Player"
        isLabelShown
        items={PLAYERS.map((name) => ({ value: name, content: name }))}
        isChosen={(name) => name === desk.player.value}
        onChoose={desk.setPlayer}
      />
      <p class="player-scatter">
        An invented player, not you yet. Cue’s line {angle(directionRad)}, speed ±
        {Math.round(speedShare * 100)} %, tip ±
        {formatQuantity(lengthInUnit(tipM, lengthUnit), finer)}, butt {angle(elevationRad)}.
      </p>
    </div>
  );
}
