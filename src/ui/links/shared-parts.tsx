import type { ComponentChild } from 'preact';
import { shotSketch } from '../../diagram/kit-sketch';
import type { Wanted } from '../../state/links/links-model';
import type { Shared, SharedShot } from '../../store/links/shared';
import type { ShelfName, Shelves } from '../../store/records';
import type { LaterModels } from '../app-models';
import { laidLines } from '../choose/all-ways/laid-words';
import { PositionPicture } from '../choose/PositionPicture';
import { goalWords, lieWords } from '../choose/shot-words';
import { capitalised } from '../choose/table-words';
import { raisedLines, strokeWords } from '../choose/way-words';
import { KitPicture } from '../kit/KitPicture';
import { SHELF_LABELS, SHELVES } from '../kit/shelf-labels';
import { seenRecord } from '../kit/shelf-words';
import { tipOf } from '../shot/tip-told';

type App = LaterModels<'shot' | 'kit' | 'measure' | 'desk'>;

/** Something a link holds, drawn small and in words. */
export interface SharedPart {
  readonly part: keyof Wanted;
  readonly title: string;
  readonly lines: readonly string[];
  readonly picture: ComponentChild;
}

/** All that a link holds, in the order to show it. */
export function sharedParts(app: App, { shot, position, kit }: Shared): readonly SharedPart[] {
  const shelves = SHELVES.filter((shelf) => kit[shelf]);
  const [first] = shelves;
  return [
    ...(shot ? [shotPart(app, shot)] : []),
    ...(position
      ? [
          {
            part: 'position' as const,
            title: position.name,
            lines: [
              `A position of ${position.balls.length} balls`,
              ...(position.drill ? laidLines(app, position) : [goalWords(position.goal)]),
            ],
            picture: <PositionPicture position={position} />,
          },
        ]
      : []),
    ...(first
      ? [
          {
            part: 'kit' as const,
            title: shelves.length > 1 ? 'The kit' : SHELF_LABELS[first],
            lines: shelves.map((shelf) => recordWords(app, shelf, kit[shelf])),
            picture: (
              <KitPicture
                sketch={seenRecord(app, first, kit[first] as Shelves[ShelfName]).sketch}
              />
            ),
          },
        ]
      : []),
  ];
}

function shotPart(app: App, { shot }: SharedShot): SharedPart {
  const { lengthM } = app.kit.current.tables.value;
  return {
    part: 'shot',
    title: 'A shot',
    lines: [
      capitalised(lieWords(shot, app.desk.preferences.value, lengthM)),
      capitalised(strokeWords({ option: { stroke: shot } }, app.shot.speedScale.value, tipOf(app))),
      ...raisedLines(shot),
    ],
    picture: <KitPicture sketch={shotSketch(shot.cutRad)} />,
  };
}

/** "House cue: 42 mm squirt". */
function recordWords(app: App, shelf: ShelfName, record: Shelves[ShelfName] | undefined): string {
  if (!record) return '';
  const { figure, caption } = seenRecord(app, shelf, record);
  return `${record.name}: ${figure} ${caption}`;
}
