import { signal } from '@preact/signals';
import type { InputName } from './tile-words';

/** The input whose control was open last. */
export const lastInput = signal<InputName>('cut');
