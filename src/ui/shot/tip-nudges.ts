/** The four ways to nudge the tip over the face. */
export const TIP_NUDGES = [
  { field: 'height', towards: 1, arrow: '↑', label: 'up' },
  { field: 'side', towards: -1, arrow: '←', label: 'left' },
  { field: 'side', towards: 1, arrow: '→', label: 'right' },
  { field: 'height', towards: -1, arrow: '↓', label: 'down' },
] as const;
