import type { Place, Router } from './route';
import './NavBar.css';

const PLACES: readonly (readonly [Place, string])[] = [
  ['shot', 'Shot'],
  ['choose', 'Choose'],
  ['kit', 'Kit'],
];

/** The way between the places. */
export function NavBar({ router }: { router: Router }) {
  const { place } = router.route.value;
  return (
    <nav class="nav-bar" aria-label="Places">
      {PLACES.map(([name, label]) => (
        <a key={name} href={`#${name}`} aria-current={name === place ? 'page' : undefined}>
          {label}
        </a>
      ))}
    </nav>
  );
}
