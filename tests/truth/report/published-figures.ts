import { AIM_FIGURES } from './figures-of-aim';
import { CONTACT_FIGURES } from './figures-of-contact';
import { CUSHION_FIGURES } from './figures-of-cushion';
import { SLIDE_AND_ROLL_FIGURES } from './figures-of-slide-and-roll';
import { STRIKE_FIGURES } from './figures-of-strike';
import type { FigureTable } from './published-figure';

/** Every published figure that engine and reference are held to. */
export const PUBLISHED_FIGURES: readonly FigureTable[] = [
  ...STRIKE_FIGURES,
  ...SLIDE_AND_ROLL_FIGURES,
  ...CONTACT_FIGURES,
  ...CUSHION_FIGURES,
  ...AIM_FIGURES,
];
