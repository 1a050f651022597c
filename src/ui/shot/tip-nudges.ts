/** The four ways to nudge the tip over the face. */
export const TIP_NUDGES = [
  { field: 'height', towards: 1, arrow: '↑', label: 'up', key: 'ArrowUp' },
  { field: 'side', towards: -1, arrow: '←', label: 'left', key: 'ArrowLeft' },
  { field: 'side', towards: 1, arrow: '→', label: 'right', key: 'ArrowRight' },
  { field: 'height', towards: -1, arrow: '↓', label: 'down', key: 'ArrowDown' },
] as const;
