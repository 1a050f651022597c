import { channelOf } from './tab-channel';

/** Tells the other tabs that their stored app is gone. */
export function tellOfRepair(): void {
  const channel = channelOf();
  channel.postMessage('repaired');
  channel.close();
}

/** Calls back when another tab has taken the stored app away. */
export function onRepairElsewhere(hear: () => void): void {
  channelOf().addEventListener('message', hear);
}
