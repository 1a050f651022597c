import { useSignalEffect } from '@preact/signals';
import type { AppModels } from './app-models';
import { ChoosePlace } from './choose/ChoosePlace';
import { FreshStart } from './install/FreshStart';
import { KitPlace } from './kit/KitPlace';
import { LogPlace } from './log/LogPlace';
import { NavBar } from './NavBar';
import { NewsBar } from './NewsBar';
import { placeTitle } from './place-title';
import { ShotPlace } from './shot/ShotPlace';
import { WhenBroken } from './WhenBroken';
import './App.css';

/** The whole app: news, the place one is in, and the way to the others. */
export function App({ app }: { app: AppModels }) {
  useSignalEffect(() => {
    const { theme, hand } = app.desk.preferences.value;
    document.documentElement.dataset.theme = theme;
    document.documentElement.dataset.hand = hand;
    const slate = getComputedStyle(document.documentElement).getPropertyValue('--slate').trim();
    for (const bar of document.querySelectorAll('meta[name="theme-color"]')) {
      bar.setAttribute('content', slate);
    }
  });
  useSignalEffect(() => {
    document.title = placeTitle(app.router.route.value);
  });
  const { place } = app.router.route.value;
  return (
    <div class="app">
      <div>
        <NewsBar news={app.news} />
        <FreshStart app={app} />
      </div>
      <WhenBroken key={place} app={app}>
        {place === 'shot' && <ShotPlace app={app} />}
        {place === 'choose' && <ChoosePlace app={app} />}
        {place === 'kit' && <KitPlace app={app} />}
        {place === 'log' && <LogPlace app={app} />}
      </WhenBroken>
      <NavBar router={app.router} />
    </div>
  );
}
