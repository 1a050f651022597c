import type { Rail, WayKind } from '../../engine/goal/goal';
import type { PocketName } from '../../engine/table/pocket-shape';
import type { KitFieldPath } from '../kit-fields';
import type { ShelfName } from '../records';

/** What links are written by: one that begins otherwise is from another version. */
export const LINK_VERSION = 1;

/** How many bytes of checksum stand last, in every version. */
export const SEAL_BYTES = 4;

/*
 * The order of everything here is that of every link ever sent: nothing is moved or taken out. A new
 * number of the kit goes last in its list.
 */

/** The numbers of each thing, in their order, by their dotted names. */
export const LINK_NUMBERS: { readonly [S in ShelfName]: readonly KitFieldPath<S>[] } & {
  readonly [N in 'shot' | 'table' | 'place' | 'zone' | 'stroke']: readonly string[];
} = {
  shot: [
    'shot.distanceM',
    'shot.cutRad',
    'shot.side',
    'shot.height',
    'shot.elevationRad',
    'shot.speedMps',
    'pocket.distanceM',
    'pocket.mouthM',
  ],
  table: ['lengthM', 'widthM'],
  place: ['xM', 'yM'],
  zone: ['xM', 'yM', 'radiusM'],
  stroke: ['aimRad', 'side', 'height', 'elevationRad', 'speedMps'],
  cues: ['massRatio', 'tipDiameterM', 'tipRadiusM'],
  cloths: ['slideFriction', 'rollFriction', 'spinDecayRadS2', 'bedRestitution'],
  balls: [
    'ballRadiusM',
    'ballRestitution',
    'ballFriction.a',
    'ballFriction.b',
    'ballFriction.c',
    'cueBallMassRatio',
  ],
  tables: [
    'lengthM',
    'widthM',
    'bedSlope.alongM_per_M',
    'bedSlope.rightM_per_M',
    'cushion.restitution',
    'cushion.friction',
    'cushion.lossPerMps',
    'cushion.lossFromMps',
    'cushion.noseHeight',
  ],
};

/** Pockets by number; 0 is none. */
export const LINK_POCKETS: readonly (PocketName | null)[] = [
  null,
  'near-left',
  'near-right',
  'middle-right',
  'far-right',
  'far-left',
  'middle-left',
];

/** Stands for a rule that picks balls: they follow. */
export const LIST_OF_BALLS = 'balls';

/** Rules by number; 0 is none said. */
export const LINK_RULES = [undefined, 'any', 'lowest', 'low', 'high', LIST_OF_BALLS] as const;

/** Kinds of ways by number. */
export const LINK_KINDS: readonly WayKind[] = ['direct', 'bank', 'kick', 'combination', 'carom'];

/** What a ball meets on its way: a rail by number, or a ball by its own, counted on from these. */
export const LINK_RAILS: readonly Rail[] = ['near', 'far', 'left', 'right'];

/** Where numbers come from, by number. */
export const LINK_ORIGINS = ['invented', 'by-hand'] as const;
