import { useEffect, useState } from 'preact/hooks';

/** Whether a frame with this component is out: what is not to be seen in it need not hold it up. */
export function useSeen(): boolean {
  const [isSeen, setSeen] = useState(false);
  useEffect(() => setSeen(true), []);
  return isSeen;
}
