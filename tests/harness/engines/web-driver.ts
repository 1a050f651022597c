/** One session of a browser, spoken to in the W3C's WebDriver protocol. */
export interface WebDriver {
  get(path: string): Promise<unknown>;
  post(path: string, body: object): Promise<unknown>;
  end(): Promise<void>;
}

/** Opens a session at a driver that listens at `url`. */
export async function openSession(url: string, capabilities: object): Promise<WebDriver> {
  const opened = (await ask(`${url}/session`, 'POST', {
    capabilities: { alwaysMatch: capabilities },
  })) as { sessionId: string };
  const session = `${url}/session/${opened.sessionId}`;
  return {
    get: (path) => ask(session + path, 'GET'),
    post: (path, body) => ask(session + path, 'POST', body),
    end: async () => {
      await ask(session, 'DELETE');
    },
  };
}

async function ask(url: string, method: string, body?: object): Promise<unknown> {
  const response = await fetch(url, body ? { method, body: JSON.stringify(body) } : { method });
  const { value } = (await response.json()) as { value: unknown };
  if (response.ok) return value;
  const { error, message } = value as { error: string; message: string };
  throw new Error(`${method} ${new URL(url).pathname}: ${error}: ${message}`);
}
