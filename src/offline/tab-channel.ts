/** What tabs of one app hear of each other by: another folder of the host is another app. */
export function channelOf(topic = ''): BroadcastChannel {
  return new BroadcastChannel(new URL(`./${topic}`, document.baseURI).href);
}

/** By which tabs tell each other of the rows they have written. */
export function rowChannel() {
  const channel = channelOf('#rows');
  return {
    post: (message: unknown) => channel.postMessage(message),
    onMessage(hear: (message: unknown) => void) {
      channel.addEventListener('message', ({ data }) => hear(data));
    },
  };
}
