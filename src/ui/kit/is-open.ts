import type { Router } from '../route';

/** Whether a row leads to what is open beside it, as `aria-current` tells it. */
export function isOpen({ route }: Router, opens: string): true | undefined {
  return route.value.panel.split('/')[0] === opens || undefined;
}
