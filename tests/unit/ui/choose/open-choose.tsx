import { cleanup, render, screen } from '@testing-library/preact';
import { createDeskModel } from '../../../../src/state/desk-model';
import { createKitModel } from '../../../../src/state/kit-model';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import type { SavedPosition } from '../../../../src/store/saved-position';
import type { AppModels } from '../../../../src/ui/app-models';
import { ChoosePlace } from '../../../../src/ui/choose/ChoosePlace';
import { createRouter } from '../../../../src/ui/route';
import { openShot } from '../../state/shot-fakes';
import { CUT, fakeChoose } from './fake-choose';

/** Choose at an address, over a model that does as it is told. */
export function openChoose(hash = '#choose', position: SavedPosition = CUT) {
  cleanup();
  history.replaceState(null, '', hash);
  const store = createMemoryStore(createNoticeBoard());
  const desk = createDeskModel({ store, desk: DEFAULT_DESK });
  const kit = createKitModel({ store, desk, shelves: DEMO_CATALOGUE });
  const fake = fakeChoose(position);
  const router = createRouter(window);
  const shot = openShot().model;
  const app = { shot, kit, desk, router, choose: fake.choose } as AppModels;
  const { container } = render(<ChoosePlace app={app} />);
  return { ...fake, app, router, container };
}

export const press = (name: string | RegExp) => screen.getByRole('button', { name }).click();
