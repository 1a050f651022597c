import { expect, it } from 'vitest';
import { keptPhone } from '../harness/kept-phone';
import { beginTrial, stepTitle, tapDigits } from '../harness/measure-at-table';
import { untilRendered } from '../harness/open-app';
import { tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

const phone = keptPhone();

it('goes on at the same step with the same text after the browser was killed between two keys', async () => {
  const before = await phone.launch();
  const page = await before.newPage();
  await phone.goTo(page, 'kit/measure');
  await beginTrial(page, 'Line');
  await tapButton(page, 'It is placed');
  await tapButton(page, 'Played');
  await tapDigits(page, '12.');
  await tapButton(page, 'right');
  await untilKept(page, 'attempts', {
    typed: expect.objectContaining({ text: expect.stringMatching(/^12\. .* right$/) }),
  });
  const address = page.url();
  await phone.kill(before);

  const after = await phone.launch();
  try {
    const again = await after.newPage();
    await again.goto(address);
    await untilRendered(again);
    expect(await stepTitle(again)).toBe('Where did it touch?');
    expect(await again.getByLabel('Figure').textContent()).toMatch(/^12\..*right/);
  } finally {
    await after.close();
  }
});
