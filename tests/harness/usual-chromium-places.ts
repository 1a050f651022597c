import { join } from 'node:path';
import { chromium } from 'playwright-core';

/** Where a Chromium or Chrome usually lies on this system, Playwright's own download last. */
export function usualChromiumPlaces(): string[] {
  return [...installedPlaces(), chromium.executablePath()];
}

function installedPlaces(): string[] {
  switch (process.platform) {
    case 'linux':
      return linuxPlaces();
    case 'darwin':
      return macPlaces();
    case 'win32':
      return windowsPlaces();
    default:
      return [];
  }
}

function linuxPlaces(): string[] {
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  const folders = ['/usr/bin', '/usr/local/bin', '/snap/bin'];
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

function macPlaces(): string[] {
  const folders = ['/Applications', join(process.env.HOME ?? '', 'Applications')];
  return folders.flatMap((folder) =>
    ['Google Chrome', 'Chromium'].map((app) => join(folder, `${app}.app/Contents/MacOS/${app}`)),
  );
}

function windowsPlaces(): string[] {
  const { PROGRAMFILES, LOCALAPPDATA } = process.env;
  return [PROGRAMFILES, process.env['PROGRAMFILES(X86)'], LOCALAPPDATA]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) =>
      ['Google/Chrome', 'Chromium'].map((app) => join(folder, app, 'Application/chrome.exe')),
    );
}
