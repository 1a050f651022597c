import { signal } from '@preact/signals';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import type {
  KnownPlayer,
  PlayerJob,
  PlayerReport,
} from '../../../../src/engine/player/player-report';
import { strokeByRule } from '../../../../src/engine/player/player-rule';
import { INVENTED_PROFILES, type StrokeProfile } from '../../../../src/engine/room/stroke-profile';
import type { SharePort } from '../../../../src/sensors/share-file';
import { createDeskModel, type DeskModel } from '../../../../src/state/desk-model';
import { createNotedPlayers } from '../../../../src/state/player/noted-players';
import { createPlayerFile } from '../../../../src/state/player/player-file';
import { createPlayerModel, type PlayerModel } from '../../../../src/state/player/player-model';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import { newPlayer } from '../../../../src/store/parse-player';
import type { PlayedShot, Player } from '../../../../src/store/player';
import type { StorePort } from '../../../../src/store/store-port';
import { STUDENT } from '../../../store/invented-players';
import { createRests, noteIn } from '../at-rest';

/** Whoever plays, as far as a shot asks; nothing is learnt of them. */
export function somebody(profile: StrokeProfile = INVENTED_PROFILES.club) {
  return {
    profile: signal(profile),
    known: signal<KnownPlayer | null>(null),
    isKnown: signal(false),
    inPlay: signal(newPlayer('invented', 'Invented', 0)),
  };
}

const NOTHING = { madeOf10: null, shots: [] };

/** An invented player who is learnt: the steadier the more they say to make, and the more they played. */
export function inventedPlayer({
  madeOf10,
  shots,
}: Pick<PlayerJob, 'madeOf10' | 'shots'> = NOTHING): KnownPlayer {
  const directionRad = 0.01 / (1 + (madeOf10 ?? 0) + shots.length);
  const figure = (value: number) => ({ value, low: value / 2, high: value * 2 });
  return {
    shots: shots.length,
    lineRad: figure(directionRad),
    bias: { aimRad: figure(0.001), fullRad: figure(0.0005), speedShare: figure(0.02) },
    profile: strokeByRule(directionRad),
    spread: { ...UNMEASURED, massRatio: UNMEASURED.massRatio / 2 },
    some: [[0, 0, 0, 0, 0, 0]],
  };
}

export function inventedPlayerReport(job: PlayerJob): PlayerReport {
  return {
    known: inventedPlayer(job),
    notLearnt: job.shots.map(() => null),
    lines: job.shots.map(() => null),
    question: null,
    next: null,
  };
}

/** A browser without a share sheet, and where its downloads lie. */
function fakeSharing(files: File[]): SharePort {
  return {
    prefersSheet: false,
    canShare: () => false,
    share: async () => {},
    download: (file) => void files.push(file),
  };
}

/** A student who answered the question, learnt at once. */
export function knownPlayer(
  store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>,
  desk: DeskModel,
  players: readonly Player[] = [STUDENT],
  played: readonly PlayedShot[] = [],
) {
  const player = createPlayerModel({
    store,
    desk,
    players,
    played,
    report: async (job) => inventedPlayerReport(job),
    noted: {
      recall: ({ madeOf10 }) => inventedPlayer({ madeOf10, shots: [] }),
      keep() {},
      forget() {},
    },
    later: () => () => {},
  });
  return withFile(player, []);
}

/** With the file of one player alone, which comes later than the rest. */
function withFile(player: PlayerModel, files: File[], now = Date.now) {
  const file = createPlayerFile({ player, sharing: fakeSharing(files), digest: null, now });
  return { ...player, file };
}

export interface OpenPlayerOptions {
  /** Null: the browser cannot work beside the page. */
  readonly report?: ((job: PlayerJob) => Promise<PlayerReport>) | null;
  /** Another visit: what was kept is loaded again. */
  readonly kept?: StorePort;
  /** What the last visit noted of what was learnt. */
  readonly note?: { text: string | null };
  readonly build?: string;
  /** What was played before, by the student, who then plays; left out, as loaded. */
  readonly played?: readonly PlayedShot[];
}

/** The players over a memory store, with rests and the time of day as the test decides. */
export async function openPlayer(options: OpenPlayerOptions = {}) {
  const { note = { text: null }, build = 'a build' } = options;
  const { report = async (job: PlayerJob) => inventedPlayerReport(job) } = options;
  const { played = [] } = options;
  const isStudent = played.length > 0;
  const store = options.kept ?? createMemoryStore(createNoticeBoard());
  const loaded = await store.loadAll();
  const desk = createDeskModel({ store, desk: loaded.desk });
  const clock = { ms: 1_797_000_000_000 };
  const now = () => {
    clock.ms += 1000;
    return clock.ms;
  };
  let ids = loaded.played.length + loaded.players.length;
  const newId = () => {
    ids += 1;
    return `new-${ids}`;
  };
  const jobs: PlayerJob[] = [];
  const files: File[] = [];
  const { later, rest } = createRests();
  const player = createPlayerModel({
    store,
    desk,
    players: isStudent ? [STUDENT] : loaded.players,
    played: isStudent ? played : loaded.played,
    report:
      report &&
      ((job) => {
        jobs.push(job);
        return report(job);
      }),
    noted: createNotedPlayers(noteIn(note), build),
    later,
    now,
    newId,
  });
  return { player: withFile(player, files, now), desk, store, jobs, files, rest, note };
}
