import type { StoreOutcome } from './stored-app';

/** A worker that can be asked to store what it lacks: the one at work, or one that is to follow it. */
export type Role = 'active' | 'waiting';

/** What a page may ask of a worker, as it is called between versions: to take over, or to store what is missing. */
export const ASKS = { takeOver: 'SKIP_WAITING', fill: 'FILL' } as const;

export type Asked =
  | { readonly type: typeof ASKS.takeOver }
  | { readonly type: typeof ASKS.fill; readonly as: Role };

/** What a worker tells every page of the app, each time that it has tried to store all of it. */
export interface StoreNews {
  /** One that is being installed is none unless it is whole. */
  readonly by: Role | 'installing';
  readonly outcome: StoreOutcome;
}

/** @param scope the folder of the app: another one of the same host is another app */
export const storeChannel = (scope: string) => new BroadcastChannel(`stored ${scope}`);
