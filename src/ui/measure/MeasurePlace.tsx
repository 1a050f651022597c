import { useMemo } from 'preact/hooks';
import type { LaterModels } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { AttemptScreen } from './AttemptScreen';
import { MeasurePage } from './MeasurePage';
import { createMeasureSession } from './measure-session';
import './Measure.css';

/** What do I know of my kit, and how do I learn more? All trials, or one attempt. */
export function MeasurePlace({
  app,
  id,
}: {
  app: LaterModels<'kit' | 'measure' | 'awake' | 'nowMs' | 'install' | 'desk' | 'router'>;
  id: string;
}) {
  const session = useMemo(createMeasureSession, []);
  if (id === '') return <MeasurePage app={app} />;
  const progress = app.measure.progress(id);
  if (!progress) {
    return (
      <>
        <PanelHeader router={app.router} title="Measure" />
        <p>This one is no longer here.</p>
      </>
    );
  }
  return <AttemptScreen app={app} session={session} progress={progress} />;
}
