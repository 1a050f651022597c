import type { Models } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { KeptDrillPanel } from './KeptDrillPanel';
import { LadderPanel } from './LadderPanel';
import { isTheme } from './practice-words';
import './Practice.css';

interface Props {
  readonly app: Models<'player' | 'log' | 'shot' | 'desk' | 'router'>;
  /** A ladder's theme, or the id of a way that was kept. */
  readonly id: string;
}

/** One try after the other, of a ladder or of a way that was kept. */
export function PracticeEntry({ app, id }: Props) {
  if (isTheme(id)) return <LadderPanel app={app} theme={id} />;
  const drill = app.log.practice.kept.find(id);
  if (drill !== null) return <KeptDrillPanel app={app} drill={drill} />;
  return (
    <>
      <PanelHeader router={app.router} title="Practice" />
      <p>This one is no longer kept.</p>
    </>
  );
}
