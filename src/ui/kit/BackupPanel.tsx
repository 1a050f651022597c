import type { Models } from '../app-models';
import { BackupBringIn } from './BackupBringIn';
import { BackupSave } from './BackupSave';
import { BackupStorage } from './BackupStorage';
import { BackupUndo } from './BackupUndo';
import { PanelHeader } from './PanelHeader';
import './Backup.css';

/** A copy of everything in one file: to keep elsewhere, and to bring back. */
export function BackupPanel({ app }: { app: Models<'nowMs' | 'backup' | 'router'> }) {
  return (
    <>
      <PanelHeader router={app.router} title="Backup" />
      <BackupUndo app={app} />
      <p class="place-note">
        Everything stays on this device, and nowhere else. A phone may clear what a site keeps: when
        it runs short of room, when the site has not been opened for some weeks, or with the
        browser’s history. So keep a copy elsewhere. It also carries all over to another phone, or
        from the browser to the home screen.
      </p>
      <BackupSave app={app} />
      <BackupBringIn app={app} />
      <BackupStorage app={app} />
    </>
  );
}
