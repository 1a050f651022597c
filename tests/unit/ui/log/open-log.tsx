import { computed, signal } from '@preact/signals';
import { cleanup, render, screen } from '@testing-library/preact';
import type { RungJob } from '../../../../src/engine/player/drill-shots';
import type { PlayerJob } from '../../../../src/engine/player/player-report';
import { createChooseModel } from '../../../../src/state/choose/create-choose-model';
import { createKitInPlay } from '../../../../src/state/kit-in-play';
import { createKitModel } from '../../../../src/state/kit-model';
import { createLogModel } from '../../../../src/state/log/log-model';
import { DEMO_CATALOGUE } from '../../../../src/store/demo-catalogue';
import type { PlayedShot } from '../../../../src/store/player';
import type { SavedPosition } from '../../../../src/store/saved-position';
import type { AppModels } from '../../../../src/ui/app-models';
import { ChoosePlace } from '../../../../src/ui/choose/ChoosePlace';
import { AfterAim } from '../../../../src/ui/log/AfterAim';
import { LogPlace } from '../../../../src/ui/log/LogPlace';
import { QuestionPanel } from '../../../../src/ui/player/QuestionPanel';
import { createRouter } from '../../../../src/ui/route';
import { InputControl } from '../../../../src/ui/shot/InputControl';
import { pictureHand } from '../../../../src/ui/shot/picture-hand';
import { ShotPlace } from '../../../../src/ui/shot/ShotPlace';
import { WhyPanel } from '../../../../src/ui/shot/WhyPanel';
import type { Work } from '../../../../src/worker/engine-pool';
import { type DrillsJob, ENGINE_WORK } from '../../../../src/worker/engine-work';
import { holdLater } from '../../state/choose/held-later';
import { inventedWork } from '../../state/choose/invented-work';
import { KNOWN } from '../../state/choose/open-choose';
import { inventedLevel } from '../../state/log/invented-level';
import { openShot } from '../../state/open-shot';
import { inventedPlayerReport, openPlayer } from '../../state/player/open-player';
import { alreadyHere } from '../already-here';
import { CUT } from '../choose/invented-choose';

const report = async (job: PlayerJob) => ({
  ...inventedPlayerReport(job),
  next: job.candidates?.length ? 0 : null,
});

const SPOT = { xM: 0.3175, yM: 0.9525, radiusM: 0.0572, low: -0.1, high: 0.1 };
const GAINS = { line: 0.142, speed: 0.03, kit: 0.011 };

/** Invented: the first shot of all that is not to be left out, made as often as is asked for. */
const ANSWERS: Readonly<Record<string, (job: never) => unknown>> = {
  level: () => inventedLevel(20),
  drills: ({ theme }: DrillsJob) =>
    inventedLevel(20).map((shot) => ({
      ...shot,
      room: 0.01,
      rest: theme === 'speed' ? SPOT : null,
    })),
  rung: ({ not, chance }: RungJob) => ({ at: not.includes(0) ? 1 : 0, chance }),
  stroke: ENGINE_WORK.stroke,
  limits: () => ({ share: 0.6, gains: GAINS, shots: 10, isOwn: false }),
};

const work = (async (name: string, job: never) => {
  const answer = ANSWERS[name];
  if (answer === undefined) throw new Error(`${name} is not asked of it`);
  return answer(job);
}) as Work;

/** Shot, Choose or Log at an address, over a store in memory, with these shots played before. */
export async function openLog(
  hash: string,
  played: readonly PlayedShot[] = [],
  positions: readonly SavedPosition[] = [CUT],
) {
  cleanup();
  history.replaceState(null, '', hash);
  const opened = await openPlayer({ report, played });
  const { player, desk, store } = opened;
  const kit = createKitModel(createKitInPlay({ store, desk, shelves: DEMO_CATALOGUE }), { desk });
  const shot = openShot({}, {}, { desk }).model;
  const choose = createChooseModel({
    store,
    positions,
    table: kit.current.tables,
    knowledge: signal(KNOWN),
    player,
    work: inventedWork({}),
    shot,
    later: holdLater().later,
  });
  const log = createLogModel({
    shot,
    desk,
    choose,
    player,
    known: computed(() => KNOWN),
    knowledge: signal(KNOWN),
    table: kit.current.tables,
    work,
    later: (does) => {
      does();
      return () => {};
    },
  });
  const router = createRouter(window);
  const nowMs = () => 1_797_000_500_000;
  // The screens looked at here read no others.
  const news = { reload: () => {} };
  const app = { player, log, kit, desk, nowMs, router, shot, choose, news } as AppModels;
  const { container } = render(<Place app={app} />);
  return { ...opened, kit, shot, choose, log, router, container };
}

function Place({ app }: { app: AppModels }) {
  const { place } = app.router.route.value;
  if (place === 'log') return <LogPlace app={app} />;
  return place === 'choose' ? (
    <ChoosePlace app={app} />
  ) : (
    <ShotPlace app={app} late={lateOf(app)} />
  );
}

/** All of Shot that comes late, already there. */
function lateOf(app: AppModels) {
  return {
    after: alreadyHere(() => <AfterAim app={app} />),
    hand: alreadyHere(pictureHand),
    control: alreadyHere(InputControl),
    why: alreadyHere(WhyPanel),
    question: alreadyHere(QuestionPanel),
  };
}

export const press = (name: string | RegExp) => screen.getByRole('button', { name }).click();
