import type { PlayerName } from '../store/records';
import { DEGREES, degreesOf } from '../units/angle-degrees';
import { formatQuantity } from '../units/format-number';
import type { AppModels } from './app-models';
import { Choices } from './controls/Choices';

const PLAYERS: readonly PlayerName[] = ['steady', 'club', 'beginner'];

/** Whose stroke the chance is told for: one of the invented players, and how theirs scatters. */
export function PlayerChoice({ app: { desk, room } }: { app: AppModels }) {
  const { directionRad, speedShare, tipM, elevationRad } = room.profile.value;
  const angle = (angleRad: number) => `±${formatQuantity(degreesOf(angleRad), DEGREES)}`;
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
        {Math.round(speedShare * 100)} %, tip ±{(tipM * 1000).toFixed(1)} mm, butt{' '}
        {angle(elevationRad)}.
      </p>
    </div>
  );
}
