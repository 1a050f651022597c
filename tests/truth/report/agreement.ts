import { agreementFamilies, type CaseFamily } from './agreement-cases';
import { type Comparison, compareShot, QUANTITIES, type Quantity } from './compare-shot';
import type { FollowedRub } from './followed-rub';
import { type Spread, spreadOf } from './spread';

/** What came of playing a family of shots twice. */
export interface FamilyAgreement {
  readonly name: string;
  readonly shots: number;
  readonly touches: number;
  readonly misses: number;
  /** Shots that touch for one and miss for the other, in words. */
  readonly disagreements: readonly string[];
  /** Over the shots that touch. */
  readonly differences: Readonly<Record<Quantity, readonly number[]>>;
  readonly rubs: readonly FollowedRub[];
}

/** Plays every shot of every family by engine and reference: a few seconds. */
export function agreement(): readonly FamilyAgreement[] {
  return agreementFamilies().map(familyAgreement);
}

/** How far apart the two are in a quantity, over some families. */
export function spreadIn(quantity: Quantity, ...families: readonly FamilyAgreement[]): Spread {
  return spreadOf(families.flatMap(({ differences }) => differences[quantity]));
}

function familyAgreement({ name, cases }: CaseFamily): FamilyAgreement {
  const comparisons = cases.map((asked) => compareShot(asked));
  const touching = comparisons.filter(isTouch);
  const inAll = (quantity: Quantity) =>
    touching.map(({ differences }) => differences[quantity]).filter((apart) => apart !== null);
  const names = Object.keys(QUANTITIES) as Quantity[];
  return {
    name,
    shots: cases.length,
    touches: touching.length,
    misses: comparisons.filter(({ outcome }) => outcome === 'miss').length,
    disagreements: comparisons.flatMap((comparison, index) =>
      comparison.outcome === 'disagree'
        ? [`shot ${index}: ${comparison.engine}, but ${comparison.reference}`]
        : [],
    ),
    differences: Object.fromEntries(
      names.map((quantity) => [quantity, inAll(quantity)]),
    ) as unknown as FamilyAgreement['differences'],
    rubs: touching.map(({ rub }) => rub),
  };
}

type Touch = Extract<Comparison, { readonly outcome: 'touch' }>;

function isTouch(comparison: Comparison): comparison is Touch {
  return comparison.outcome === 'touch';
}
