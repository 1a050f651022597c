import type { tipScale } from '../../units/tip-unit';
import type { TipUnit } from '../../units/unit-names';
import type { Models } from '../app-models';

/** How a person has tip contacts told. */
export interface TipTold {
  readonly unit: TipUnit;
  readonly scale: ReturnType<typeof tipScale>;
}

export function tipOf({ shot, desk }: Models<'shot' | 'desk'>): TipTold {
  return { unit: desk.preferences.value.tipUnit, scale: shot.tipScale.value };
}
