/** The caches that hold the app of one scope; other folders of a host may hold apps of their own. */
export async function cachesOf(scope: string): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.endsWith(scope));
}
