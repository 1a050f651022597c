import { describe, expect, it } from 'vitest';
import { layOut, unknownsOf } from '../../../../src/engine/fit/fit-layout';
import type { FitShot, Parts } from '../../../../src/engine/fit/fit-question';
import type { TrialShot } from '../../../../src/engine/fit/trials/trials';
import { KIT_QUANTITIES } from '../../../../src/engine/kit/kit-spread';
import { HONEST, MIDDLE, READABLE } from '../../../harness/trial-player';

const shot = READABLE[0] as TrialShot;

function playedWith(parts: Partial<Parts>, speedWord: 'soft' | null = null): FitShot {
  return {
    id: '',
    shot: { ...shot, stroke: { ...shot.stroke, speedWord } },
    readings: {},
    prior: { ...MIDDLE, parts: { ...MIDDLE.parts, ...parts } },
    scatter: HONEST,
  };
}

describe('layOut', () => {
  it('gives two cues on one cloth two squirts and one slide friction', () => {
    const { unknowns } = layOut([playedWith({ cue: 'a' }), playedWith({ cue: 'b' })]);
    const of = (quantity: string) => unknowns.filter((unknown) => unknown.quantity === quantity);
    expect(of('massRatio').map(({ owner }) => owner)).toEqual(['a', 'b']);
    expect(of('slideFriction').map(({ owner }) => owner)).toEqual(['cloth']);
  });

  it('keeps the player apart from a cue of that name', () => {
    const { unknowns } = layOut([playedWith({ cue: 'player' })]);
    expect(unknowns.filter(({ owner }) => owner === 'player').map(({ part }) => part)).toEqual([
      'cue',
      'player',
      'player',
      'player',
      'player',
    ]);
  });

  it('counts kits that no shot has touched', () => {
    const { unknowns } = layOut([], [MIDDLE.parts]);
    expect(unknowns.length).toBe(KIT_QUANTITIES.length + 4);
  });

  it('finds a shot its own unknowns', () => {
    const shots = [playedWith({ cue: 'a' }), playedWith({ cue: 'b' }, 'soft')];
    const layout = layOut(shots);
    const { kit, speed } = unknownsOf(shots[1] as FitShot, layout);
    const cue = kit.find(({ quantity }) => quantity === 'massRatio');
    expect(layout.unknowns[cue?.index ?? -1]).toMatchObject({ part: 'cue', owner: 'b' });
    expect(layout.unknowns[speed]?.quantity).toBe('soft');
  });

  it('has no word for a speed that is a figure', () => {
    const one = playedWith({});
    expect(unknownsOf(one, layOut([one])).speed).toBe(-1);
  });
});
