/** The caches that hold the app of one scope; other folders of a host may hold apps of their own. */
export async function cachesOf(scope: string): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.endsWith(scope));
}

/** Whether anything at all of the app is stored here. */
export async function hasStoredFiles(scope: string): Promise<boolean> {
  for (const name of await cachesOf(scope)) {
    const files = await (await caches.open(name)).keys();
    if (files.length > 0) return true;
  }
  return false;
}
