import { afterEach, describe, expect, it, vi } from 'vitest';
import { trustOwnScripts } from '../../../src/offline/own-scripts';

const OWN = ['https://example.test/app/sw.js', 'https://example.test/app/assets/engine.js'];

afterEach(() => vi.unstubAllGlobals());

/** As in a browser that makes a trusted address an object of its own. */
function knowTrustedTypes() {
  const createPolicy = vi.fn(
    (_name: string, { createScriptURL }: { createScriptURL(address: string): string }) => ({
      createScriptURL: (address: string) => ({ trusted: createScriptURL(address) }),
    }),
  );
  vi.stubGlobal('trustedTypes', { createPolicy });
  return createPolicy;
}

describe.each([true, false])('where trusted types are known: %s', (known) => {
  it.each([
    'https://example.test/app/sw.js?x',
    'https://example.test/sw.js',
    'https://elsewhere.test/app/sw.js',
    'sw.js',
    'data:text/javascript,0',
    '',
  ])('refuses "%s"', (address) => {
    if (known) knowTrustedTypes();
    expect(() => trustOwnScripts(OWN)(address)).toThrow(TypeError);
  });
});

it('lets its own scripts through as they are where trusted types are not known', () => {
  expect(OWN.map(trustOwnScripts(OWN))).toEqual(OWN);
});

it('lets its own scripts through by one policy, of the name the page allows', () => {
  const createPolicy = knowTrustedTypes();
  const trusted = OWN.map(trustOwnScripts(OWN));
  expect(trusted).toEqual(OWN.map((address) => ({ trusted: address })));
  expect(createPolicy.mock.calls.map(([name]) => name)).toEqual(['leeway']);
});
