import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { shipped, textOf } from './dist';

const page = textOf('index.html');
const policyTag = /<meta http-equiv="Content-Security-Policy" content="([^"]+)">/.exec(page);
const policy = new Map(
  (policyTag?.[1] ?? '')
    .replaceAll('&#39;', "'")
    .split('; ')
    .map((directive) => [directive.split(' ')[0], directive.split(' ').slice(1).join(' ')]),
);

describe('the content security policy', () => {
  it('comes before anything it could bind', () => {
    expect(page.indexOf(policyTag?.[0] ?? 'missing')).toBeGreaterThan(0);
    for (const tag of ['<link', '<style', '<script']) {
      expect(page.indexOf(tag)).toBeGreaterThan(policyTag?.index ?? Number.POSITIVE_INFINITY);
    }
  });

  it('forbids all but the app’s own files, and lets the page connect to nothing', () => {
    expect(policy.get('default-src')).toBe("'none'");
    expect(policy.get('script-src')).toBe("'self'");
    expect(policy.get('img-src')).toBe("'self'");
    expect(policy.get('base-uri')).toBe("'none'");
    expect(policy.get('form-action')).toBe("'none'");
    expect(policy.has('connect-src')).toBe(false);
    expect(policy.get('require-trusted-types-for')).toBe("'script'");
    expect(policy.get('trusted-types')).toBe('leeway');
    expect([...policy.values()].join(' ')).not.toMatch(/unsafe|https?:|data:|blob:|\*/);
  });

  it('allows exactly the styles written into the page, by their hash', () => {
    const styles = [...page.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, css = '']) => css);
    const hashes = styles.map(
      (css) => `'sha256-${createHash('sha256').update(css).digest('base64')}'`,
    );
    expect(hashes).toHaveLength(1);
    expect(policy.get('style-src')).toBe(["'self'", ...hashes].join(' '));
  });
});

/** Names of XML vocabularies; nothing asks for them. */
const NEVER_REQUESTED = [
  'http://www.w3.org/2000/svg',
  'http://www.w3.org/1999/xhtml',
  'http://www.w3.org/1999/xlink',
  'http://www.w3.org/1998/Math/MathML',
];

describe('what ships', () => {
  const texts = shipped.filter((file) => /\.(html|js|css|svg|webmanifest)$/.test(file));

  it('names no address outside itself', () => {
    const outside = texts.flatMap((file) =>
      [...textOf(file).matchAll(/(?:\b(?:https?|wss?|ftp):)?\/\/[\w-]+\.[\w.-]+[^\s"'`)<>\\]*/g)]
        .map(([url]) => url)
        .filter((url) => !NEVER_REQUESTED.includes(url))
        .map((url) => `${file}: ${url}`),
    );
    expect(texts.length).toBeGreaterThan(3);
    expect(outside).toEqual([]);
  });

  it('has no script or handler written into markup', () => {
    const markup = texts.filter((file) => /\.(html|svg)$/.test(file));
    for (const file of markup) {
      expect(textOf(file)).not.toMatch(/\son\w+\s*=|javascript:/i);
      expect(textOf(file)).not.toMatch(/<script(?![^>]*\ssrc=)/i);
    }
  });

  it('builds no code out of text', () => {
    for (const file of texts.filter((name) => name.endsWith('.js'))) {
      expect(textOf(file)).not.toMatch(/\beval\s*\(|\bnew Function\s*\(|\bFunction\s*\(\s*["'`]/);
    }
  });
});
