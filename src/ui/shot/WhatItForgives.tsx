import type { RoomForError } from '../../engine/room/room-for-error';
import type { FieldName } from '../../state/shot-fields';
import type { Models } from '../app-models';
import { aimHairWords, aimWindow } from './aim-window';
import { ReadingLine } from './ReadingLine';
import { fieldWindowWords } from './room-of-field';
import { WhyRow } from './WhyRow';

const ROWS: readonly (readonly [string, FieldName])[] = [
  ['Speed', 'speed'],
  ['Side', 'side'],
  ['Height', 'height'],
  ['Cue raised', 'elevation'],
];

/** How far each part of the stroke may be off, the others as meant. */
export function WhatItForgives({
  app,
  wants,
}: { app: Models<'shot' | 'room' | 'desk'> } & Pick<RoomForError, 'wants'>) {
  const ends = aimWindow(app);
  return (
    <>
      <h3>What it forgives</h3>
      {ends ? (
        <>
          <dl class="why-list is-paired">
            <WhyRow term="Aim">
              {aimHairWords(app, ends) ||
                ends.map(({ reading, miss }, i) => (
                  <span key={i === 0 ? 'from' : 'to'}>
                    {i === 0 ? 'from ' : ' to '}
                    {reading ? <ReadingLine reading={reading} /> : 'anywhere'} ({miss})
                  </span>
                ))}
            </WhyRow>
            {ROWS.map(([term, name]) => (
              <WhyRow key={name} term={term}>
                {fieldWindowWords(app, name)}
              </WhyRow>
            ))}
          </dl>
          <p class="why-note">
            One of them off, the rest as meant. Thin: the ball is cut too much. Full: too little.
          </p>
        </>
      ) : (
        <p>
          Even when all is as meant the object ball stops short of the pocket, or the bed takes it
          wide. {wants ? `Play ${wants},` : 'No speed alters that:'} cut it fuller, or take a nearer
          pocket.
        </p>
      )}
    </>
  );
}
