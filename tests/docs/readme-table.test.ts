import { describe, expect, it } from 'vitest';
import { COMMANDS, fieldsOf, firstOf, namesUnder, printedBy } from './doors-reference';

const START_TIMEOUT_MS = 300_000;

describe('the reference of the doors', () => {
  it(
    'shows a log that is learnt from when run as it stands, and names its fields',
    () => {
      const { printed, asked } = firstOf('learn');
      expect(printed).toMatchObject({ id: 6, ok: true });
      expect(printed.unknown).toBeUndefined();
      expect(namesUnder('field of what is learnt').sort()).toEqual(fieldsOf(printed).sort());
      expect(namesUnder('field of a log')).toEqual(expect.arrayContaining(Object.keys(asked)));
      const logged = asked.shots.flatMap((shot: object) => Object.keys(shot));
      expect(namesUnder('field of a logged shot')).toEqual(expect.arrayContaining(logged));
    },
    START_TIMEOUT_MS,
  );

  it(
    'shows a comparison that answers when run as it stands, and names its fields',
    () => {
      const { printed, asked } = firstOf('options');
      expect(printed).toMatchObject({ id: 4, ok: true });
      expect(printed.unknown).toBeUndefined();
      expect(namesUnder('field of a comparison').sort()).toEqual(fieldsOf(printed).sort());
      expect(namesUnder('field of a way').sort()).toEqual(fieldsOf(printed.ways[0]).sort());
      expect(namesUnder('field of a position')).toEqual(expect.arrayContaining(Object.keys(asked)));
    },
    START_TIMEOUT_MS,
  );

  it(
    'shows a search for all ways that answers when run as it stands, and names its fields',
    () => {
      const [command = ''] = COMMANDS.filter((line) => line.includes('"legal"'));
      const printed = printedBy(command);
      expect(printed).toMatchObject({ id: 7, ok: true });
      expect(printed.unknown).toBeUndefined();
      expect(namesUnder('field of all ways').sort()).toEqual(fieldsOf(printed).sort());
      expect(namesUnder('field of a way').sort()).toEqual(fieldsOf(printed.ways[0]).sort());
    },
    START_TIMEOUT_MS,
  );

  it(
    'shows a stroke that plays when run as it stands, and names its fields',
    () => {
      const { printed, asked } = firstOf('play');
      expect(printed).toMatchObject({ id: 5, ok: true });
      expect(printed.unknown).toBeUndefined();
      expect(namesUnder('field of a play').sort()).toEqual(fieldsOf(printed).sort());
      expect(namesUnder('field of a stroke to play')).toEqual(
        expect.arrayContaining(Object.keys(asked.stroke)),
      );
    },
    START_TIMEOUT_MS,
  );
});
