import type { Range } from '../../engine/numerics/range';
import type { ShownShotField } from '../../state/shot-field';

/** What a field's slider spans: of its usual range the whole steps. */
export function sliderTrack({
  usual,
  facts: { fineStep },
}: Pick<ShownShotField, 'usual' | 'facts'>): Range {
  return {
    min: Math.ceil(usual.min / fineStep) * fineStep,
    max: Math.floor(usual.max / fineStep) * fineStep,
  };
}
