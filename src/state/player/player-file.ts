import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import {
  type ShareOutcome,
  type SharePort,
  type ShareWay,
  shareFile,
} from '../../sensors/share-file';
import type { Digest } from '../../store/backup/backup-format';
import { writePlayer } from '../../store/backup/write-backup';
import type { PlayedShot, Player } from '../../store/player';
import { backupFile } from '../backup/backup-file';
import type { PlayerModel } from './player-model';

/** One player alone as a file, log and all, for a backup's import to add elsewhere. */
export interface PlayerFile {
  /**
   * Keeps the file of a player ready, for a share sheet opens only where nothing has to be waited for;
   * returns how to stop.
   */
  keepReady(id: string): () => void;
  /** Whether it can be handed out. */
  readonly isReady: ReadonlySignal<boolean>;
  /** What became of the last one; null before the first. */
  readonly outcome: ReadonlySignal<ShareOutcome | null>;
  /** Hands the file out; call it within a tap. */
  save(): Promise<void>;
}

export interface PlayerFilePorts {
  readonly player: Pick<PlayerModel, 'find' | 'everyShot'>;
  readonly sharing: SharePort;
  /** Null where the browser gives none. */
  readonly digest: Digest | null;
  readonly now: () => number;
}

export function createPlayerFile({ player, sharing, digest, now }: PlayerFilePorts): PlayerFile {
  const ready = signal<{
    readonly name: string;
    readonly text: string;
    readonly atMs: number;
  } | null>(null);
  const outcome = signal<ShareOutcome | null>(null);
  let way: ShareWay = 'sheet';
  let asked = 0;
  const write = async (player: Player, shots: readonly PlayedShot[]) => {
    asked += 1;
    const mine = asked;
    const atMs = now();
    const text = await writePlayer(player, shots, atMs, digest);
    if (mine === asked) ready.value = { name: player.name, text, atMs };
  };
  return {
    keepReady(id) {
      outcome.value = null;
      const stop = effect(() => {
        const one = player.find(id);
        const shots = player.everyShot.value.filter(({ playerId }) => playerId === id);
        if (one !== null) void write(one, shots);
      });
      return () => {
        stop();
        asked += 1;
        ready.value = null;
      };
    },
    isReady: computed(() => ready.value !== null),
    outcome,
    async save() {
      const made = ready.peek();
      if (made === null) return;
      const became = await shareFile(backupFile(made.text, made.atMs, made.name), sharing, way);
      way = became.kind === 'again' ? became.way : 'sheet';
      outcome.value = became;
    },
  };
}
