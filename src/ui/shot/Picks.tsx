import type { FieldName } from '../../state/shot-fields';
import type { ShotModel } from '../../state/shot-model';
import { Choices } from '../controls/Choices';
import { isPicked, type QuickPick } from './quick-picks';

interface Props {
  readonly model: ShotModel;
  readonly name: FieldName;
  readonly label: string;
  readonly picks: readonly QuickPick[];
}

/** Figures often wanted, a tap each. */
export function Picks({ model, name, label, picks }: Props) {
  const { figure } = model.fields[name].value;
  return (
    <Choices
      label={`${label}: often used`}
      items={picks.map(({ figure: pick, label: content }) => ({
        value: pick ?? -1,
        content,
        isOff: pick === null,
      }))}
      isChosen={(pick) => isPicked(figure, pick)}
      onChoose={(pick) => model.setFigure(name, pick)}
    />
  );
}
