import { CUT_UNITS } from '../../units/cut-unit';
import type { CutUnit } from '../../units/unit-names';
import type { Models } from '../app-models';
import { Choices } from '../controls/Choices';
import { UnitSelect } from '../controls/UnitSelect';
import { SideWord } from '../SideWord';
import { NumberControl } from './NumberControl';
import { cutPicks } from './quick-picks';

const CUT_OPTIONS: readonly (readonly [CutUnit, string])[] = [
  ['degrees', '°'],
  ['ball-hit', 'ball'],
];

/** How thin the cut is and to which side the object ball goes. */
export function CutControl({ app }: { app: Models<'shot' | 'room' | 'desk'> }) {
  const { shot, desk } = app;
  const { cutUnit } = desk.preferences.value;
  const thinnerIsMore = cutUnit === 'degrees';
  return (
    <NumberControl
      app={app}
      name="cut"
      label={CUT_UNITS[cutUnit].name === 'degrees' ? 'Cut' : 'Ball hit'}
      less={thinnerIsMore ? 'Fuller' : 'Thinner'}
      more={thinnerIsMore ? 'Thinner' : 'Fuller'}
      picks={cutPicks(cutUnit)}
      unit={
        <UnitSelect
          label="Unit of cut"
          value={cutUnit}
          options={CUT_OPTIONS}
          onChoose={(unit) => desk.setPreference('cutUnit', unit)}
        />
      }
    >
      <CutSide shot={shot} />
    </NumberControl>
  );
}

function CutSide({ shot }: Models<'shot'>) {
  return (
    <div class="cut-side">
      <Choices
        label="The object ball goes"
        items={[
          { value: -1, content: <Towards side="left" /> },
          { value: 1, content: <Towards side="right" /> },
        ]}
        isChosen={(sign) => sign === shot.cutSign.value}
        onChoose={(sign) => shot.setCutSign(sign < 0 ? -1 : 1)}
      />
    </div>
  );
}

function Towards({ side }: { side: 'left' | 'right' }) {
  return (
    <span>
      goes <SideWord side={side} />
    </span>
  );
}
