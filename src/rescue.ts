import { dropStoredApp, NOT_DROPPED } from './offline/drop-stored-app';

/**
 * The way out of a version that does not start. It is a script apart, so that it runs whatever
 * becomes of the app's own; index.html says when its part of the page is to be seen.
 */
const rescue = document.getElementById('rescue');
const offer = rescue?.querySelector('div');
const button = rescue?.querySelector('button');
const output = rescue?.querySelector('output');

async function repair(): Promise<void> {
  if (!button || !output) return;
  button.disabled = true;
  output.textContent = 'Fetching…';
  const outcome = await dropStoredApp();
  if (outcome === 'dropped') return location.reload();
  output.textContent = NOT_DROPPED[outcome];
  button.disabled = false;
}

button?.addEventListener('click', () => void repair());
rescue?.addEventListener('animationend', () => {
  // The last screen stands there, which nobody has taken over.
  const noted = document.querySelector<HTMLElement>('#app[data-noted]');
  noted?.replaceChildren();
  delete noted?.dataset.noted;
  offer?.removeAttribute('hidden');
});
if (rescue) rescue.hidden = false;
