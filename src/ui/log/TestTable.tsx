import { useComputed } from '@preact/signals';
import { layOutTable } from '../../diagram/table-map';
import { layOutTestShot } from '../../diagram/test-shot-view';
import type { AskedRest } from '../../engine/player/drill-shot';
import type { LevelShot } from '../../engine/player/level-test';
import type { Models } from '../app-models';
import { PlainTable, TwoBalls } from '../PlainTable';
import { canvasAttributes, useCanvas } from '../use-canvas';

interface Props {
  readonly app: Models<'log'>;
  readonly shot: Pick<LevelShot, 'position' | 'goal' | 'kit'>;
  /** Where the cue ball is to rest; null: anywhere. */
  readonly rest?: Pick<AskedRest, 'xM' | 'yM' | 'radiusM'> | null;
}

/** Where the balls of a test shot lie on the table in play, by the diamonds they line up with. */
export function TestTable({ app: { log }, shot, rest = null }: Props) {
  const [holder, canvas] = useCanvas();
  const shape = log.test.shape.value;
  const map = useComputed(() => layOutTable(log.test.shape.value, canvas.value)).value;
  const view = layOutTestShot(shot, shape, map);
  const at = rest && map.toPoint(rest);
  const spot = rest && at && { cx: at.x, cy: at.y, r: rest.radiusM * map.pxPerM };
  return (
    <div ref={holder} class="test-table">
      <svg
        role="img"
        aria-label={`From above: cue ball, ball and pocket, each ball where two diamonds cross${
          rest ? '; a ring where the cue ball is to stop' : ''
        }`}
        {...canvasAttributes(canvas.value)}
      >
        <PlainTable shape={shape} map={map} endTextPx={canvas.value.textPx}>
          {view && (
            <>
              {view.guides.map(({ path, counts }) => (
                <g key={path}>
                  <path class="test-guide" d={path} />
                  {counts.map(({ count, x, y }) => (
                    <text key={`${x} ${y}`} class="test-count" x={x} y={y + 4} text-anchor="middle">
                      {count}
                    </text>
                  ))}
                </g>
              ))}
              <circle class="test-ring" {...view.ring} />
              {spot && <circle class="test-spot" {...spot} />}
              <TwoBalls {...view} />
            </>
          )}
        </PlainTable>
      </svg>
    </div>
  );
}
