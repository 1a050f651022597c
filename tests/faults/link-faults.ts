import type { PlantedFault } from './planted-fault';

/** Faults in what comes and goes as links and codes. */
export const LINK_FAULTS: readonly PlantedFault[] = [
  {
    why: 'a link that was damaged on its way is opened',
    file: 'src/store/links/link-text.ts',
    find: 'sealOf(data).join() === bytes.subarray(-SEAL_BYTES).join() ? data : null',
    replace: 'data',
    catchers: ['tests/store/links/link-text.test.ts'],
  },
  {
    why: 'links in old messages tell a cushion’s friction as its restitution',
    file: 'src/store/links/link-layout.ts',
    find: "    'cushion.restitution',\n    'cushion.friction',",
    replace: "    'cushion.friction',\n    'cushion.restitution',",
    catchers: ['tests/store/links/link-text.test.ts'],
  },
  {
    why: 'a cue that comes by a link takes the place of the one in play',
    file: 'src/state/links/keeping.ts',
    find: 'id: newId(), name:',
    replace: 'id: desk.choice.peek()[shelf], name:',
    catchers: ['tests/unit/state/links/links-model.test.ts'],
  },
  {
    why: 'what a link brought stays in play after Undo',
    file: 'src/state/links/keeping.ts',
    find: 'if (desk.choice.peek()[shelf] === id) desk.choose(shelf, before);',
    replace: '',
    catchers: ['tests/unit/state/links/links-model.test.ts'],
  },
  {
    why: 'a link asks anew each time that the page is loaded',
    file: 'src/ui/links/LinksPanel.tsx',
    find: "router.open('link');",
    replace: '',
    catchers: ['tests/e2e/links.test.ts'],
  },
  {
    why: 'a way that is handed on is struck harder there than it was laid',
    file: 'src/store/links/link-layout.ts',
    find: "stroke: ['aimRad', 'side', 'height', 'elevationRad', 'speedMps']",
    replace: "stroke: ['aimRad', 'side', 'height', 'speedMps', 'elevationRad']",
    catchers: ['tests/store/links/link-text.test.ts'],
  },
  {
    why: 'a way that came by a link is laid on balls that were moved since',
    file: 'src/state/choose/brought-way.ts',
    find: 'isSame(came.balls, balls)',
    replace: 'isSame(balls, balls)',
    catchers: ['tests/unit/state/links/links-model.test.ts'],
  },
  {
    why: 'a code has no quiet zone, and cameras pass over it',
    file: 'src/diagram/code-path.ts',
    find: 'const QUIET = 4;',
    replace: 'const QUIET = 0;',
    catchers: ['tests/e2e/link-codes.test.ts'],
  },
];
