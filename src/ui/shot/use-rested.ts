import { computed, type ReadonlySignal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { atRest } from '../../state/at-rest';
import type { ShotModel } from '../../state/shot-model';

/**
 * What is told of the shot once the hand rests, and left standing while a finger is down on it.
 *
 * @param read off nothing but signals
 */
export function useRested<T>({ isHeld }: ShotModel, read: () => T): ReadonlySignal<T> {
  return useState(() => atRest(computed(read), isHeld))[0];
}
