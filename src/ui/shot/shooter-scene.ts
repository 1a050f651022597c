import type { ShooterScene } from '../../diagram/shooter-scene';
import type { Shot } from '../../engine/direct/shot';
import type { Kit } from '../../engine/kit/kit';
import type { Models } from '../app-models';

type SceneModels = Models<'shot' | 'room' | 'kit' | 'desk'>;

/**
 * What the drawing from behind the cue shows: the balls and the tip as they are asked for, which a
 * finger may be moving, the last answer to them, what is known of it, and what is held.
 */
export function shooterScene(app: SceneModels): ShooterScene {
  const { shot: model, room, kit, desk } = app;
  const last = model.lastAnswer.value;
  const shot = model.shot.value;
  const playedWith = last?.kit ?? kit.kit.value;
  const { distanceM, cutRad } = shot;
  const tip = tipOf(app, shot, playedWith);
  const held = model.comparison.value;
  const assessed = last && room.room.value;
  const band = assessed?.windows?.aimRad;
  const sdRad = assessed?.certainty.aimSdRad;
  const aimRad = last?.answer.aimRad ?? 0;
  return {
    ballRadiusM: playedWith.ballRadiusM,
    distanceM,
    cutRad,
    lead: desk.preferences.value.lead,
    tip,
    marks: last?.answer ?? null,
    bandRad: band ? { low: band.low.value, high: band.high.value } : null,
    sureRad: sdRad === undefined ? null : { low: aimRad - sdRad, high: aimRad + sdRad },
    held: held?.result.ok ? { ...held.result, tip: tipOf(app, held.shot, playedWith) } : null,
  };
}

function tipOf({ shot, kit }: SceneModels, { side, height }: Shot, playedWith: Kit) {
  const { ballRadiusM, tipRadiusM } = playedWith;
  return {
    side,
    height,
    limit: shot.tipLimit,
    domeRadii: tipRadiusM / ballRadiusM,
    widthRadii: kit.current.cues.value.tipDiameterM / ballRadiusM,
  };
}
