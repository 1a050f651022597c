import type { FirstModels, LateParts } from './app-models';
import { FreshStart } from './install/FreshStart';
import { LatePart } from './LatePart';
import { NavBar } from './NavBar';
import { NewsBar } from './NewsBar';
import { placeTitle } from './place-title';
import { ShotPlace } from './shot/ShotPlace';
import { useFollowed } from './use-followed';
import { WhenBroken } from './WhenBroken';
import './App.css';

interface Props {
  readonly app: FirstModels;
  readonly late: LateParts;
}

/** The whole app: news, the place one is in, and the way to the others. */
export function App({ app, late }: Props) {
  useFollowed(() => {
    document.title = placeTitle(app.router.route.value);
  });
  const { place } = app.router.route.value;
  return (
    <div class="app">
      <div>
        <NewsBar news={app.news} lines={late.news} />
        <FreshStart app={app} />
      </div>
      <WhenBroken key={place} models={late.models}>
        {place === 'shot' && <ShotPlace app={app} late={late} />}
        {place !== 'shot' && <OtherPlace key={place} part={late[place]} reload={app.news.reload} />}
      </WhenBroken>
      <NavBar router={app.router} />
    </div>
  );
}

interface OtherProps {
  readonly part: LateParts['choose'];
  readonly reload: () => void;
}

function OtherPlace({ part, reload }: OtherProps) {
  return (
    <LatePart part={part} wrapper="main" reload={reload}>
      {(Place) => <Place />}
    </LatePart>
  );
}
