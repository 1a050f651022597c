import { type Signal, signal } from '@preact/signals';
import type { ToGo } from '../../engine/fit/fit-report';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { EntryUnit } from './keypad-draft';

/** An attempt as it began. */
interface OpenedAttempt {
  readonly id: string;
  readonly knowledge: KitKnowledge;
  readonly toGo: ToGo | null;
}

/** What is remembered from one attempt to the next while the app is open. */
export interface MeasureSession {
  /** The unit last chosen on a keypad. */
  readonly unit: Signal<EntryUnit | null>;
  /** What was known and left to do when an attempt was opened, and which. */
  readonly opened: Signal<OpenedAttempt | null>;
}

export function createMeasureSession(): MeasureSession {
  return {
    unit: signal<EntryUnit | null>(null),
    opened: signal<MeasureSession['opened']['value']>(null),
  };
}
