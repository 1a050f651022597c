import { useRef } from 'preact/hooks';
import type { Place, Router } from './route';
import './NavBar.css';

const PLACES: readonly (readonly [Place, string])[] = [
  ['shot', 'Shot'],
  ['choose', 'Choose'],
  ['kit', 'Kit'],
  ['log', 'Log'],
];

/** The way between the places. It leads back into Choose to where one left it. */
export function NavBar({ router }: { router: Router }) {
  const { place, panel } = router.route.value;
  const left = useRef('#choose');
  if (place === 'choose') left.current = panel === '' ? '#choose' : `#choose/${panel}`;
  const addressOf = (name: Place) =>
    name === 'choose' && place !== 'choose' ? left.current : `#${name}`;
  return (
    <nav class="nav-bar" aria-label="Places">
      {PLACES.map(([name, label]) => (
        <a key={name} href={addressOf(name)} aria-current={name === place ? 'page' : undefined}>
          {label}
        </a>
      ))}
    </nav>
  );
}
