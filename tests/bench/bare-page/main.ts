import { h, render } from 'preact';

/** The least an app of this stack does: one line to read, and a service worker that stores it all. */
void navigator.serviceWorker.register('./sw.js');
const holder = document.getElementById('app');
if (holder) render(h('p', { class: 'answer' }, '18 mm right of the ghost ball'), holder);
