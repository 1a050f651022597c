/** Lets an address through where it is one of the app's own scripts. */
export type TrustScript = (address: string) => string;

interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL(address: string): string },
  ): { createScriptURL(address: string): string };
}

/**
 * The one way past the content security policy's `trusted-types`: whatever starts a script by its
 * address must ask here, and gets nothing but the scripts named. What it gets is a string by its
 * type alone, in a browser that knows trusted types; every browser takes it for an address.
 *
 * @throws TypeError from the function it returns, for any other address.
 */
export function trustOwnScripts(own: readonly string[]): TrustScript {
  const createScriptURL = (address: string) => {
    if (own.includes(address)) return address;
    throw new TypeError(`${address} is no script of this app.`);
  };
  const { trustedTypes } = globalThis as { readonly trustedTypes?: TrustedTypes };
  const policy = trustedTypes?.createPolicy('leeway', { createScriptURL });
  return policy ? (address) => policy.createScriptURL(address) : createScriptURL;
}
