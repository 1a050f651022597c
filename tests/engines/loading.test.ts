import { expect, it } from 'vitest';
import { loadInWebKit } from '../harness/engines/load-in-webkit';
import { startStaticServer } from '../harness/static-server';

it('loads in WebKit with nothing to say on the console', async () => {
  const server = await startStaticServer({ folder: 'dist' });
  try {
    const urls = ['#shot', '#choose', '#kit/measure'].map((place) => server.url + place);
    const isStored = () => server.requests.includes('/sw.js');
    expect(await loadInWebKit(urls, isStored)).toEqual([]);
    expect(isStored()).toBe(true);
  } finally {
    await server.stop();
  }
});
