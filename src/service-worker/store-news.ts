import type { StoreOutcome } from './stored-app';

/** A worker that can be asked to store what it lacks: the one at work, or one that is to follow it. */
export type Role = 'active' | 'waiting';

/** What a page may ask of a worker: to take over, or to store what is missing. */
export type Asked =
  | { readonly type: 'SKIP_WAITING' }
  | { readonly type: 'FILL'; readonly as: Role };

/** What a worker tells every page of the app, each time that it has tried to store all of it. */
export interface StoreNews {
  /** One that is being installed is none unless it is whole. */
  readonly by: Role | 'installing';
  readonly outcome: StoreOutcome;
}

/** @param scope the folder of the app: another one of the same host is another app */
export const storeChannel = (scope: string) => new BroadcastChannel(`stored ${scope}`);
