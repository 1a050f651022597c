import { computed, type ReadonlySignal } from '@preact/signals';
import type { KnownPlayer } from '../../engine/player/player-report';
import type { StrokeProfile } from '../../engine/room/stroke-profile';
import { freshId } from '../../store/fresh-id';
import { newPlayer } from '../../store/parse-player';
import type { PlayedShot, Player } from '../../store/player';
import type { StorePort } from '../../store/store-port';
import { crowded } from '../crowded';
import type { DeskModel } from '../desk-model';
import { createKeptRows } from '../kept-rows';
import { steady } from '../steady';
import { type Leans, leansOf } from './leans';
import { createLearnPlayer, type LearnPlayer, type ReportPlayer } from './learn-player';
import { createLearntAtRest } from './learnt-at-rest';
import type { NotedPlayers } from './noted-players';
import { createPlayedEdits, type PlayedEdits } from './played-edits';
import { createPlayerEdits, type PlayerEdits } from './player-edits';
import { type PlayerQuestion, playerQuestion } from './player-question';
import { ANYBODY, roughStroke } from './rough-stroke';

/** How many shots somebody has logged, and how many of them were not struck as meant. */
export interface ShotTally {
  readonly shots: number;
  readonly notMeant: number;
}

/** Who plays, what they have played, and what is learnt of them from it. */
export interface PlayerModel extends PlayerEdits, PlayedEdits {
  /** Everybody, the one made first first. */
  readonly players: ReadonlySignal<readonly Player[]>;
  /** Who plays now. */
  readonly inPlay: ReadonlySignal<Player>;
  /** All that they have played, the oldest first: what is not learnt from as well. */
  readonly played: ReadonlySignal<readonly PlayedShot[]>;
  /** What is learnt of whoever plays; null while nothing is. */
  readonly known: ReadonlySignal<KnownPlayer | null>;
  /** Where their line lies shot after shot; null while nothing is learnt. */
  readonly leans: ReadonlySignal<Leans | null>;
  /** Whether that is of all there is to learn from. */
  readonly isFresh: ReadonlySignal<boolean>;
  /** Whether anything is known of them: until then the chances are those of anybody. */
  readonly isKnown: ReadonlySignal<boolean>;
  /** How their strokes scatter, and about what: somebody in the middle of all until more is known. */
  readonly profile: ReadonlySignal<StrokeProfile>;
  /** The same as readings take it. */
  readonly roughProfile: ReadonlySignal<StrokeProfile>;
  /** The last shot of whoever plays that was removed, while `restoreShot` can bring it back. */
  readonly lastRemoved: ReadonlySignal<PlayedShot | null>;
  /** Why no shot can be logged, in one line; null where one can. */
  readonly crowded: ReadonlySignal<string | null>;
  /** One line on what could not be saved or learnt, or null. */
  readonly problem: ReadonlySignal<string | null>;
  /** All there is to learn whoever plays from. */
  readonly question: ReadonlySignal<PlayerQuestion>;
  /** Learns from whatever it is given; null where the browser cannot work beside the page. */
  readonly learning: LearnPlayer | null;
  /** What everybody has played. */
  readonly everyShot: ReadonlySignal<readonly PlayedShot[]>;
  find(id: string): Player | null;
  /** How many shots somebody has logged. */
  tallyOf(id: string): ShotTally;
  flush(): Promise<void>;
  /** Stops watching. */
  dispose(): void;
}

export interface PlayerPorts {
  readonly store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>;
  readonly desk: Pick<DeskModel, 'playerId' | 'setPlayer'>;
  /** As loaded; there is always one. */
  readonly players: readonly Player[];
  readonly played: readonly PlayedShot[];
  /** Null where the browser cannot work beside the page. */
  readonly report: ReportPlayer | null;
  readonly noted: NotedPlayers<KnownPlayer>;
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
  /** The time of day, ms since 1970. */
  readonly now?: () => number;
  readonly newId?: () => string;
}

/** Keeps the players and what they have played, and learns whoever plays. */
export function createPlayerModel(ports: PlayerPorts): PlayerModel {
  const { store, desk, report, noted, later, now = Date.now, newId = freshId } = ports;
  const players = createKeptRows({ store, list: 'players' }, ports.players);
  const played = createKeptRows({ store, list: 'played' }, ports.played);
  const nobody = newPlayer('', '', 0);
  const inPlay = computed(
    () => players.find(desk.playerId.value) ?? players.all.value[0] ?? nobody,
  );
  const mine = computed(() => {
    const { id } = inPlay.value;
    return played.all.value.filter(({ playerId }) => playerId === id);
  });
  const question = playerQuestion(inPlay, mine);
  const learning = report && createLearnPlayer(report);
  const { learnt, isFresh, problem, dispose } = createLearntAtRest({
    question,
    learn: learning?.learn ?? null,
    noted,
    later,
  });
  const profile = steady(computed(() => learnt.value?.profile ?? ANYBODY));
  const edits = { inPlay, now, newId };

  const playerEdits = createPlayerEdits({ ...edits, players, played, desk });

  return {
    ...playerEdits,
    remove(id) {
      const removed = playerEdits.remove(id);
      if (removed.ok) noted.forget(id);
      return removed;
    },
    ...createPlayedEdits({ ...edits, players, played }),
    players: players.all,
    inPlay,
    played: mine,
    known: learnt,
    isFresh,
    isKnown: computed(() => learnt.value !== null),
    profile,
    roughProfile: steady(computed(() => roughStroke(profile.value))),
    lastRemoved: computed(() => {
      const removed = played.removed.value;
      return removed?.playerId === inPlay.value.id ? removed : null;
    }),
    crowded: computed(() => crowded(played.all.value)),
    problem: computed(() => players.problem.value ?? played.problem.value ?? problem.value),
    leans: computed(() => learnt.value && leansOf(learnt.value)),
    question,
    learning,
    everyShot: played.all,
    find: players.find,
    tallyOf(id) {
      const shots = played.all.value.filter(({ playerId }) => playerId === id);
      return { shots: shots.length, notMeant: shots.filter(({ asMeant }) => !asMeant).length };
    },
    async flush() {
      await Promise.all([players.flush(), played.flush()]);
    },
    dispose,
  };
}
