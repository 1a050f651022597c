import type { HandedOut, KeptOfLink } from '../../state/links/links-model';
import type { LinkFault } from '../../store/links/link-text';

/** Why a link is not opened. */
export const LINK_FAULT_WORDS: Readonly<Record<LinkFault, string>> = {
  'no-link': 'There is no link of Leeway’s in this.',
  damaged: 'This link is damaged: nothing of it can be used. Ask for it again.',
  newer: 'This link was made by a newer Leeway. Update this one, then open it again.',
};

/** What became of a link that was handed out. */
export const LINK_OUTCOME_WORDS: Readonly<Record<HandedOut, string>> = {
  shared: '',
  copied: 'Copied.',
  refused: 'The browser does not let it be copied from here: select it above, and copy it.',
};

/** What was kept: "On Shot now. Kept as a position, and open." */
export function keptWords({ shot, position, kit, added, isInPlay, isLaid }: KeptOfLink): string {
  return [
    ...(shot ? ['The shot is on Shot; Undo there takes it back, too.'] : []),
    ...(position
      ? [`The position is kept and open on Choose${isLaid ? ', with its way laid on it' : ''}.`]
      : []),
    ...(kit ? [kitWords(added.length, isInPlay)] : []),
  ].join(' ');
}

function kitWords(added: number, isInPlay: boolean): string {
  const kept = added === 0 ? 'All of the kit was here already' : 'The kit is kept beside yours';
  return `${kept}${isInPlay ? ', and in play' : ''}.`;
}
