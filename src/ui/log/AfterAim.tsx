import type { Models } from '../app-models';
import { AfterShot } from './AfterShot';

/** Right after the shot on screen was played. */
export function AfterAim({ app }: { app: Models<'player' | 'log' | 'kit' | 'desk' | 'router'> }) {
  return <AfterShot app={app} asked={app.log.askShot()} />;
}
