import { useEffect } from 'preact/hooks';
import { codePath } from '../../diagram/code-path';
import type { LaterModels } from '../app-models';

/** A link as a code for a camera. The screen stays lit as long as it is shown. */
export function CodePicture({ app: { awake }, url }: { app: LaterModels<'awake'>; url: string }) {
  useEffect(() => {
    awake.hold();
    return () => awake.release();
  }, [awake]);
  const { size, d } = codePath(url);
  return (
    <svg class="code-picture" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={LABEL}>
      <rect class="card-paper" width={size} height={size} />
      <path class="card-fill" d={d} />
    </svg>
  );
}

const LABEL = 'A QR code of this link, for the camera of another phone';
